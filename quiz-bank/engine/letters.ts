/** The letter of the n-th choice, from nought. */
export const letterOf = (index: number): string => String.fromCharCode(65 + index);

/** The cell of a lettered grid: column letter, row number from one. */
export const cellName = (column: number, row: number): string => `${letterOf(column)}${row + 1}`;
