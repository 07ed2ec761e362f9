// Runs every command that README.md shows and writes down what it prints now.
import { execFileSync } from 'node:child_process'
import { readFileSync, writeFileSync } from 'node:fs'
import { refreshedPage } from './readme-commands.ts'

const run = (words: readonly string[]): string =>
  execFileSync(process.execPath, ['bin/marram.js', ...words], {
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1' },
  })
writeFileSync('README.md', refreshedPage(readFileSync('README.md', 'utf8'), run))
