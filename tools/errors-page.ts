/** The text of `docs/errors.md` for a table of codes: one heading a group, in the order of the table. */
export function errorsPage(codes: Readonly<Record<string, string>>): string {
  const groups = new Map<string, string[]>()
  for (const [code, meaning] of Object.entries(codes)) {
    const group = code.split('-')[1] ?? ''
    groups.set(group, [...(groups.get(group) ?? []), `| \`${code}\` | ${meaning.replaceAll('|', '\\|')} |`])
  }
  const sections = [...groups].map(
    ([group, rows]) => `## ${group}\n\n| code | meaning |\n|---|---|\n${rows.join('\n')}\n`,
  )
  return `${OPENING}\n${sections.join('\n')}`
}

const OPENING = `# Failures and faults

Everything that can be expected to go wrong has a code. The command line prints \`CODE message (where)\` on standard
error, or with \`--json\` the document \`{"error":{"code","message","where"}}\` on standard output; the server answers
with the same document. A fault of somebody's data carries a severity (\`error\`, \`warning\`, \`note\`), the place and
what to do. A code is never reused for another meaning.

Exit codes of the command line: 0 done; 1 done, but the data has faults of severity error; 2 could not run.

This page is written by \`npm run errors-doc\` from \`src/faults/codes.ts\`; a test keeps the two equal.
`
