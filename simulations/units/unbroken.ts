const NO_BREAK = '\u00a0';

/** What stands after a number and belongs to it, as this manual prints units. */
const unit =
  /(?<=\d) (?=[%°×µ]|(?:in[²³]?|ft²?|[mc]m[²³]?|m²?|m[gL]|lbf?|kg|N|k?Pa|psi|rpm|min|h|days|ppm|L|US|oz|fl)(?![a-z]))/g;

/** A sentence in which no line parts a number from its unit. */
export const unbroken = (text: string): string =>
  text.replace(unit, NO_BREAK).replace(/(?<=US) (?=qt|gal)|(?<=×) (?=\d)/g, NO_BREAK);
