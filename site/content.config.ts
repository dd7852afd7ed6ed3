import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

import { course } from '@lessons/course.ts';

const slugs = course.map((one) => one.slug);

/** A module's front matter. Its number, title and outcomes stand in `lessons/`; here is what only the page knows. */
const lessons = defineCollection({
  loader: glob({ base: './lessons/en', pattern: '*.mdx' }),
  schema: z.strictObject({
    slug: z.enum(slugs as [(typeof slugs)[number], ...typeof slugs]),
    /** One or two sentences that open the page and stand in search results. */
    summary: z.string().min(40).max(260),
    minutes: z.number().int().min(5).max(15),
    /** Rules the module states; the page lists them and a test checks that they exist. */
    rules: z.array(z.string()),
    /** Terms of the glossary that the module explains. */
    terms: z.array(z.string()).default([]),
  }),
});

/** The page for the instructor, one a module. */
const teach = defineCollection({
  loader: glob({ base: './lessons/en/teach', pattern: '*.mdx' }),
  schema: z.strictObject({
    slug: z.enum(slugs as [(typeof slugs)[number], ...typeof slugs]),
    minutes: z.number().int().min(5).max(90),
    materials: z.array(z.string()).min(1),
  }),
});

export const collections = { lessons, teach };
