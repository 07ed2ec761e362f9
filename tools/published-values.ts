// Writes docs/published-values.md: every published value that we check beside our own.
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { publishedPage, publishedSubjects } from './published-values/published-page.ts'

writeFileSync(
  fileURLToPath(new URL('../docs/published-values.md', import.meta.url)),
  publishedPage(publishedSubjects()),
)
