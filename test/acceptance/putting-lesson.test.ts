import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { puttingLessonPage } from '../../tools/putting-lesson-page.ts'

test('the page of putts for lessons is what the program computes', () => {
  const page = readFileSync('docs/putting-lesson.md', 'utf8')
  expect(page, 'npm run putting-lesson writes it again').toBe(puttingLessonPage())
})
