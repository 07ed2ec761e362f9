import type { Fault } from '#faults/fault.ts'
import type { ImportReport, ReportedHole, SetAside } from '#golf/course/import-report.ts'
import type { Machine } from './machine.ts'
import { faultCounts, faultLines } from './print-faults.ts'
import { REASONS_PRINTED } from './settings.ts'
import { tableLines } from './table.ts'
import { lengthNumber, type ReaderUnits } from './units-of-the-reader.ts'

/** What became of a source, for a person: the holes, what belongs to none, what was set aside, what is missing. */
export function importPage(
  report: ImportReport,
  faults: readonly Fault[],
  out: string,
  units: ReaderUnits,
  isQuiet: boolean,
  machine: Machine,
): string[] {
  const { total, used, ignored, needsPerson } = report.elements
  const closing = [
    `${report.courseName || 'Course'}: ${holeCount(report.holes.length)} written to ${out}, ${faultCounts(faults)}`,
    `${total} elements: ${used} used, ${ignored} ignored with a reason, ${needsPerson} for a person to decide`,
  ]
  if (isQuiet) return closing
  return [
    ...holeTable(report.holes, units),
    ...section('Greens of more than one hole', sharedGreens(report)),
    ...section(
      'Belongs to no hole',
      report.unownedHazards.map(({ id, ground }) => `${id}: ${ground}`),
    ),
    ...section(
      'For a person to decide',
      report.needsPerson.map(({ id, what, reason }) => `${id} (${what}): ${reason}`),
    ),
    ...section('Ignored', reasonsWithCounts(report.ignored)),
    ...section('Missing before the holes can be planned', report.missing),
    ...section('Noticed', faultLines(faults, machine)),
    ...closing,
  ]
}

function holeCount(count: number): string {
  return count === 1 ? '1 hole' : `${count} holes`
}

function holeTable(holes: readonly ReportedHole[], units: ReaderUnits): string[] {
  if (holes.length === 0) return []
  const unit = units === 'yards' ? 'yd' : 'm'
  const rows = holes.map((hole) => [
    hole.ref,
    hole.par === null ? '?' : String(hole.par),
    lengthNumber(hole.lengthMetres, units),
    hole.cardLengthMetres === null ? '–' : lengthNumber(hole.cardLengthMetres, units),
    String(hole.tees.length),
    String(hole.fairways.length),
    String(hole.hazards.length),
    hole.green ?? 'none',
  ])
  const figures = ['hole', 'par', unit, `card ${unit}`, 'tees', 'fairways', 'hazards']
  const columns = [...figures.map((heading) => ({ heading, isFigure: true })), { heading: 'green' }]
  return [...tableLines(columns, rows), '']
}

function sharedGreens(report: ImportReport): string[] {
  return report.sharedGreens.map(({ id, holes }) => `${id}: holes ${holes.join(' and ')}`)
}

/** One line a reason with how many elements it put aside, most first. */
function reasonsWithCounts(ignored: readonly SetAside[]): string[] {
  const counts = new Map<string, number>()
  for (const { what, reason } of ignored) {
    const line = `${what}: ${reason}`
    counts.set(line, (counts.get(line) ?? 0) + 1)
  }
  const lines = [...counts].sort((a, b) => b[1] - a[1]).map(([line, count]) => `${count} × ${line}`)
  const rest = lines.length - REASONS_PRINTED
  return rest > 1
    ? [...lines.slice(0, REASONS_PRINTED), `and ${rest} more reasons; --json has them all`]
    : lines
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : [title, ...lines.map((line) => `  ${line}`), '']
}
