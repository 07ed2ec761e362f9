/** A name as an id of files and addresses: small letters, digits and single hyphens, 48 at most; `player` when none is left. */
export function playerId(name: string): string {
  const plain = name
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .slice(0, 48)
    .replaceAll(/^-+|-+$/g, '')
  return plain === '' ? 'player' : plain
}
