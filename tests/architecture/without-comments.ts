/** The source without its comments; a comment-like part of a string may go with them, which only a search may accept. */
export const withoutComments = (source: string): string =>
  source.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '$1');
