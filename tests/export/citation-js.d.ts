declare module '@citation-js/core' {
  export const plugins: {
    readonly input: { chain(text: string, options: { readonly generateGraph: boolean }): unknown };
  };
}

declare module '@citation-js/plugin-bibtex' {}
