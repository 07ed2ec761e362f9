// Brings `node_modules` to what the lockfile says, and does nothing when it is already there. Imports no package:
// it runs before there is one.
import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/** Runs `npm ci` in `root` unless every package of the lockfile is installed in the version it names. */
export function installWhenMissing(root) {
  if (isInstalled(root)) return
  console.log('Installing the packages named in package-lock.json …')
  execFileSync('npm', ['ci', '--no-audit', '--no-fund'], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
  })
}

/** True when npm's own record of what it installed agrees with the lockfile; packages for other machines may be absent. */
function isInstalled(root) {
  const record = join(root, 'node_modules/.package-lock.json')
  if (!existsSync(record)) return false
  const wanted = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')).packages
  const present = JSON.parse(readFileSync(record, 'utf8')).packages
  return Object.entries(wanted).every(([path, entry]) => {
    if (path === '') return true
    if (present[path] === undefined) return entry.optional === true || entry.devOptional === true
    return present[path].version === entry.version
  })
}
