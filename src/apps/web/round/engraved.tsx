import { type ReactElement, useEffect, useRef } from 'react'

/** A drawing that was engraved before the start, as it is. */
export function Engraved({ svg }: { readonly svg: string }): ReactElement {
  const place = useRef<HTMLSpanElement>(null)
  useEffect(() => {
    const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement
    parsed.setAttribute('aria-hidden', 'true')
    place.current?.replaceChildren(document.importNode(parsed, true))
  }, [svg])
  return <span ref={place} className="engraved" />
}
