// Writes docs/putting-lesson.md: how putts break and how long they play, for lessons.
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { puttingLessonPage } from './putting-lesson-page.ts'

writeFileSync(fileURLToPath(new URL('../docs/putting-lesson.md', import.meta.url)), puttingLessonPage())
