// The graph of rooms in ARCHITECTURE.md, as the imports are. `--write` draws it again; without, it fails when stale.
import { readFileSync, writeFileSync } from 'node:fs'
import { cruiseHouse } from './cruise.mjs'

const PAGE = 'ARCHITECTURE.md'
const START = '<!-- room graph: npm run room-graph -->'
const END = '<!-- end of room graph -->'

const drawn = graph(await cruiseHouse(['src']))
const page = readFileSync(PAGE, 'utf8')
const [before, rest] = page.split(START)
const after = rest?.split(END)[1]
if (after === undefined)
  throw new Error(`${PAGE} has lost the lines between which the graph stands: ${START} … ${END}`)
const wanted = `${before}${START}\n${drawn}\n${END}${after}`
if (process.argv.includes('--write')) writeFileSync(PAGE, wanted)
else if (wanted !== page) {
  console.log(`${PAGE} shows another room graph than the imports make. Run: npm run room-graph`)
  process.exitCode = 1
}

/** Mermaid text: floors as boxes, an arrow for "imports"; `faults` is left out because every room may use it. */
function graph({ modules }) {
  const edges = new Set()
  const rooms = new Set()
  for (const { source, dependencies } of modules) {
    const from = roomOf(source)
    if (from === null || /\.(test|fixture)\.tsx?$/.test(source)) continue
    rooms.add(from)
    for (const { resolved } of dependencies) {
      const to = roomOf(resolved)
      if (to !== null && to !== from) edges.add(`  ${id(from)} --> ${id(to)}`)
    }
  }
  const floors = ['apps', 'outside', 'paper', 'golf', 'numbers'].flatMap((floor) => {
    const inside = [...rooms].filter((room) => room.startsWith(`${floor}/`)).sort()
    if (inside.length === 0) return []
    return [`  subgraph ${floor}`, ...inside.map((room) => `    ${id(room)}[${room.split('/')[1]}]`), '  end']
  })
  return ['```mermaid', 'graph TD', ...floors, ...[...edges].sort(), '```'].join('\n')
}

function roomOf(path) {
  const match = /^src\/(apps|outside|paper|golf|numbers)\/([^/]+)\//.exec(path)
  return match === null ? null : `${match[1]}/${match[2]}`
}

function id(room) {
  return room.replace('/', '_')
}
