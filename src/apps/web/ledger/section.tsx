import { type ReactElement, type ReactNode, useId } from 'react'

/** A part of the ledger under its ruled title. */
export function Section(props: {
  readonly title: string
  readonly className?: string
  readonly children: ReactNode
}): ReactElement {
  const id = useId()
  return (
    <section aria-labelledby={id} className={props.className}>
      <h2 id={id}>{props.title}</h2>
      {props.children}
    </section>
  )
}
