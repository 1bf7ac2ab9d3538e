/** Braces in a text: figure paths and torques. Apart from the figures themselves, which the pages need not carry. */
export const FIGURE_REFERENCE = /\{([^{}\n]*)\}/g;
