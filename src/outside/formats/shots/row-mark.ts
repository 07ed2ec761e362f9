/**
 * All cells of a row as one text where one of them is a time of day, else empty. Our assumption: no two shots agree in
 * that and in all else; in distances alone they do.
 */
export function rowMark(cells: readonly string[]): string {
  return cells.some((cell) => /\d{1,2}:\d{2}/.test(cell)) ? cells.join('\t') : ''
}
