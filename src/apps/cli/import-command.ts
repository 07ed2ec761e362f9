import { basename } from 'node:path'
import type { Fault } from '#faults/fault.ts'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import type { ElevationGrid } from '#golf/course/elevation-grid.ts'
import { encodeCourse } from '#golf/course/encode-course.ts'
import { type CourseWithElevation, withElevation } from '#golf/course/with-elevation.ts'
import { readElevation } from '#outside/formats/read-elevation.ts'
import { importPage } from './import-page.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { outsideNames } from './outside-names.ts'
import { printJson, printLines } from './print-answer.ts'
import { exitCodeOf } from './print-faults.ts'
import { readBytes } from './read-file.ts'
import { readSources } from './read-sources.ts'
import { parseUnits } from './units-of-the-reader.ts'
import { writeText } from './write-file.ts'

/** The options of `marram import`. */
export interface ImportOptions extends GlobalOptions {
  readonly out: string
  readonly elevation?: string
}

/**
 * `marram import`: sources → a course file, with heights from a grid when one is given, and a report of what became of
 * every element. Returns the exit code.
 */
export async function importCommand(
  paths: readonly string[],
  options: ImportOptions,
  machine: Machine,
): Promise<number> {
  const units = parseUnits(options.units)
  const { elevation: path } = options
  const grid = path === undefined ? null : await readElevation(readBytes(path), basename(path))
  const reading = await readSources(paths)
  const { course: surveyed, report, faults: found } = assembleCourse(reading.features, reading)
  const raised = grid === null ? null : withElevation(surveyed, grid)
  const faults: readonly Fault[] = [...reading.faults, ...found, ...(raised?.faults ?? [])]
  writeText(options.out, encodeCourse(raised?.course ?? surveyed))
  if (options.json) {
    const elevation =
      grid === null || raised === null
        ? {}
        : {
            elevation: {
              source: grid.source,
              cell_m: grid.cellMetres,
              filled: raised.filled,
              too_coarse: raised.tooCoarse,
            },
          }
    printJson(
      { schema: 'import/1', out: options.out, report: outsideNames(report), ...elevation, faults },
      machine,
    )
    return exitCodeOf(faults)
  }
  const heights = grid === null || raised === null ? [] : heightLines(raised, grid)
  const page = importPage(report, faults, options.out, units, options.quiet === true, machine)
  printLines([...page, ...heights], machine)
  return exitCodeOf(faults)
}

/** What was taken from a grid of heights, for a person. */
function heightLines({ filled, tooCoarse }: CourseWithElevation, grid: ElevationGrid): string[] {
  const cell = `cell ${Number(grid.cellMetres.toFixed(1))} m`
  const slopes =
    filled.contours > 0
      ? `contours of ${filled.contours} greens (${cell})`
      : `mean fall of ${filled.falls} greens (${cell}: too coarse for contours)`
  return [`heights from ${grid.source}: ${filled.tees} tees, ${filled.greens} greens; ${tooCoarse ?? slopes}`]
}
