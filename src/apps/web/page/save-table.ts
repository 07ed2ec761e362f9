/** Gives the reader a table as a file of the disk. */
export function saveTable(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'text/csv' }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  URL.revokeObjectURL(address)
}
