import { Component, type ReactNode } from 'react'
import { TroubleNote } from './trouble-note.tsx'

/** Shows a defect of the page in words instead of an empty page; loading the page again is the way out. */
export class DefectNote extends Component<
  { readonly children: ReactNode },
  { readonly message: string | null }
> {
  override state: { readonly message: string | null } = { message: null }

  static getDerivedStateFromError(error: unknown): { readonly message: string } {
    return { message: error instanceof Error ? error.message : String(error) }
  }

  override render(): ReactNode {
    const { message } = this.state
    if (message === null) return this.props.children
    const words = `The desk has a defect and stopped. Load the page again, nothing is lost in the store. It says: ${message}`
    return (
      <main className="desk">
        <TroubleNote trouble={{ code: '', message: words, where: '' }} />
      </main>
    )
  }
}
