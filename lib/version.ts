/** The version of renotate, as in package.json; a test holds them together. */
export const toolVersion = '0.1.0'
