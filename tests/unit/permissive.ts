/** What a reader's browser may be given without more than the licence's own lines. */
export const PERMISSIVE = /^(MIT|MIT-0|ISC|BSD-[23]-Clause|0BSD|Apache-2\.0|OFL-1\.1|BlueOak-1\.0\.0)$/;
