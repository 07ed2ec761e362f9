/** Lines under a title, a blank line before it; nothing where there are none. */
export function titled(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)]
}
