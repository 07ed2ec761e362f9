/**
 * Text fit for a terminal: control characters from a file (a name, an id, a path) are taken out, so that none can move
 * the cursor or hide a line. Line ends and tabs stay, and so do colours where the terminal shows them.
 */
export function plainText(text: string, hasColour: boolean): string {
  return text.replaceAll(/\p{Cc}(?:\[\d{1,2}m)?/gu, (found) => {
    if (found.startsWith('\n') || found.startsWith('\t')) return found
    return hasColour && COLOUR.test(found) ? found : ''
  })
}

const COLOUR = new RegExp(`^${String.fromCharCode(27)}\\[`)
