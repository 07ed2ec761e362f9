import { useEffect, useRef, useState } from 'react'
import { flushSync } from 'react-dom'
import { DESK_SETTINGS } from '../settings.ts'

/**
 * A value once it has rested for a moment, or the page is about to be printed; `null` before. For what nobody sees while a
 * hand drags. The value must be the same object as long as nothing has changed.
 */
export function useSettled<Value>(value: Value): Value | null {
  const [settled, settle] = useState<Value | null>(null)
  const latest = useRef(value)
  latest.current = value
  useEffect(() => {
    const later = setTimeout(() => settle(() => value), DESK_SETTINGS.settleMilliseconds)
    return () => clearTimeout(later)
  }, [value])
  useEffect(() => {
    const atOnce = (): void => flushSync(() => settle(() => latest.current))
    addEventListener('beforeprint', atOnce)
    return () => removeEventListener('beforeprint', atOnce)
  }, [])
  return settled
}
