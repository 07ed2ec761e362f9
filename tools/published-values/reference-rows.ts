import { readFileSync } from 'node:fs'
import Papa from 'papaparse'

/** The rows of a table of test/fixtures/reference by column; its `status` column says how sure each row is. */
export function referenceRows(file: string): Record<string, string>[] {
  const text = readFileSync(new URL(`../../test/fixtures/reference/${file}`, import.meta.url), 'utf8')
  return Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data
}
