/**
 * Policy hashes of the only two `<style>` elements that react-aria 1.22.1 (of react-aria-components) writes into a page:
 * touch handling of pressable elements, and overscroll while a dialog is open on a touch device.
 * tests/site/injected-style-hashes.test.ts derives both from the installed package.
 */
export const injectedStyleHashes: readonly string[] = [
  'sha256-38RhXrc7EdReTKsOm23ZPOCUgniTUUcjky8QOOrQx6o=',
  'sha256-gYiS/BvZvRcK27JIXTuwhZ3hs2+VJ1X+2gUlE+farlg=',
];
