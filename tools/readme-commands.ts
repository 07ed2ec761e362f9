/** A command shown in a page with the output printed below it: a fenced block whose first line is `$ npx marram …`. */
export interface ShownCommand {
  readonly words: readonly string[]
  readonly output: string
}

const BLOCK = /^```\n\$ npx marram (.+)\n([\s\S]*?)^```$/gm

/** Every command a page shows with its output. Words are split at blanks; none of them is quoted. */
export function shownCommands(page: string): ShownCommand[] {
  return [...page.matchAll(BLOCK)].map(([, words = '', output = '']) => ({ words: words.split(' '), output }))
}

/** The page with the output of every shown command as `run` gives it now. */
export function refreshedPage(page: string, run: (words: readonly string[]) => string): string {
  return page.replaceAll(
    BLOCK,
    (_block, words: string) => `\`\`\`\n$ npx marram ${words}\n${run(words.split(' '))}\`\`\``,
  )
}
