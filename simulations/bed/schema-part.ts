import * as z from 'zod/mini';

/** An object of known fields; every one may be left out with `maybe`, what is there must be known and in range. */
export const part = <T extends z.core.$ZodLooseShape>(shape: T) =>
  z.strictObject(shape, { error: 'give an object with the fields described' });

export const maybe = z.optional;
