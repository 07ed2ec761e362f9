import { type RefObject, useMemo } from 'react'

/**
 * The height that an element had before it was to be kept, CSS pixels; 0 while it need not be. A page that grows shorter
 * while something on it is dragged would scroll away under the hand.
 */
export function useKeptHeight(element: RefObject<HTMLElement | null>, isKept: boolean): number {
  return useMemo(() => (isKept ? (element.current?.offsetHeight ?? 0) : 0), [element, isKept])
}
