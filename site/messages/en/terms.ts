export const termsPage = {
  title: 'Terms of the trade',
  lead: 'The words the course uses, each in a sentence or two, with the module that explains it.',
  module: 'Module',
  also: 'also',
} as const;
