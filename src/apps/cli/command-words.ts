/** What a command says of the course that it takes. */
export const COURSE = 'a course file, a hole table (.csv), or any source that can be imported'

/** An option that may be given again. */
export function listed(value: string, before: readonly string[] = []): readonly string[] {
  return [...before, value]
}
