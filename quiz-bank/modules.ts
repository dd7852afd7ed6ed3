import { course, type ModuleSlug } from '../lessons/course.ts';

/** The modules of the course in the order they are taught; a module is named by its lesson's slug everywhere. */
export const MODULES: readonly ModuleSlug[] = course.map(({ slug }) => slug);

export type ModuleId = ModuleSlug;
