import type { WordTable } from '#golf/round/word-table.ts'
import { capital } from '#golf/strategy/capital.ts'

/** A table read out, a sentence a row: its first words, then each figure with what it is. */
export function tableSentences({ columns, rows }: WordTable): string[] {
  return rows.map(([first = '', ...rest]) => {
    const heading = columns[0]?.heading ?? ''
    const figures = rest.flatMap((cell, index) => {
      const text = cell.trim().replace(/ +/g, ' ')
      const column = columns[index + 1]
      if (text === '') return []
      return [column?.isFigure ? `${column.heading} ${text}` : text]
    })
    return `${capital(heading === '' ? first : `${heading} ${first}`)}: ${figures.join(', ')}.`
  })
}
