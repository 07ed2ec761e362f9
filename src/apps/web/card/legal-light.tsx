import type { ReactElement } from 'react'
import { RULES_2023 } from '#golf/rules/rules-2023.ts'
import type { LaidOut } from './lay-out.ts'

const { devices, greenBook, edition } = RULES_2023

/** Whether these pages may be carried in a counting round, by the check that measures every page; always in view. */
export function LegalLight({ laid }: { readonly laid: LaidOut }): ReactElement {
  const { faults, facts } = laid
  if (facts.purpose === 'practice')
    return (
      <p className="legal-light legal-practice" role="status">
        <b>Practice only.</b> Not to be carried in a counting round, as the page says. Choose “a counting
        round” to see what the Rules take.
      </p>
    )
  if (faults.length === 0)
    return (
      <p className="legal-light legal-taken" role="status">
        <b>May be carried.</b> Nothing found against Rule {devices.clause} or {greenBook.clause} ({edition}).
        The Committee’s Local Rules and a referee stand above this.
      </p>
    )
  return (
    <div className="legal-light legal-refused" role="status">
      <p>
        <b>May not be carried.</b> {faults.length === 1 ? 'One thing' : `${faults.length} things`} would break
        the Rules, so it is not printed:
      </p>
      <ul>
        {faults.map(({ code, message, place, advice }) => (
          <li key={`${code} ${place}`}>
            {place}: {message} {advice} <small>{code}</small>
          </li>
        ))}
      </ul>
    </div>
  )
}
