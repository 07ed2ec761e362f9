// Writes docs/errors.md from the one table of codes.
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { FAULT_CODES } from '../src/faults/codes.ts'
import { errorsPage } from './errors-page.ts'

writeFileSync(fileURLToPath(new URL('../docs/errors.md', import.meta.url)), errorsPage(FAULT_CODES))
