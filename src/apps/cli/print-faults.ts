import pc from 'picocolors'
import type { Fault, Severity } from '#faults/fault.ts'
import type { Machine } from './machine.ts'
import { FAULTS_PRINTED_SINGLY } from './settings.ts'

const ORDER: readonly Severity[] = ['error', 'warning', 'note']

/**
 * Faults → lines for a person, gravest first, each with its place and what to do. The same fault in many places is
 * one line with its first places; JSON has them all.
 */
export function faultLines(faults: readonly Fault[], machine: Machine): string[] {
  const colours = pc.createColors(machine.hasColour)
  const paint = { error: colours.bold, warning: colours.underline, note: (text: string): string => text }
  return ORDER.flatMap((severity) =>
    sameFaults(faults.filter((fault) => fault.severity === severity)),
  ).flatMap((same) => {
    const [fault] = same
    if (fault === undefined) return []
    return [
      `${paint[fault.severity](fault.severity)} ${fault.code}${placesText(same)}: ${fault.message}`,
      ...(fault.advice === '' ? [] : [`    ${fault.advice}`]),
    ]
  })
}

/** Faults of one code and advice together, in the order in which they first came. */
function sameFaults(faults: readonly Fault[]): Fault[][] {
  const groups = new Map<string, Fault[]>()
  for (const fault of faults) {
    // Lines of a log are mended one by one, so what is wrong with each is said.
    const key = `${fault.code} ${fault.advice}${fault.code.startsWith('MAR-ROUND') ? fault.message : ''}`
    const group = groups.get(key)
    if (group === undefined) groups.set(key, [fault])
    else group.push(fault)
  }
  return [...groups.values()].flatMap((group) =>
    group.length > FAULTS_PRINTED_SINGLY ? [group] : group.map((fault) => [fault]),
  )
}

function placesText(same: readonly Fault[]): string {
  const places = [...new Set(same.map(({ place }) => place))].filter((place) => place !== '')
  const rest = places.length - FAULTS_PRINTED_SINGLY
  const first = places.slice(0, FAULTS_PRINTED_SINGLY).join(', ')
  if (places.length === 0) return same.length > 1 ? `, ${same.length} times` : ''
  return rest > 0 ? ` ${first} and ${rest} more` : ` ${first}`
}

/** `3 errors, 1 warning, 12 notes`; `no faults` when there are none. */
export function faultCounts(faults: readonly Fault[]): string {
  const counts = ORDER.map((severity) => ({
    severity,
    count: faults.filter((fault) => fault.severity === severity).length,
  }))
    .filter(({ count }) => count > 0)
    .map(({ severity, count }) => `${count} ${severity}${count === 1 ? '' : 's'}`)
  return counts.length === 0 ? 'no faults' : counts.join(', ')
}

/** 1 when a fault makes the answer wrong or impossible, else 0. */
export function exitCodeOf(faults: readonly Fault[]): number {
  return faults.some((fault) => fault.severity === 'error') ? 1 : 0
}
