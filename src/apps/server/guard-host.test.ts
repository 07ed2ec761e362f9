import { hostname } from 'node:os'
import { describe, expect, it } from 'vitest'
import { ownHosts } from './guard-host.ts'

describe('ownHosts', () => {
  it.each([
    'localhost',
    'localhost:4173',
    'LOCALHOST:1',
    '127.0.0.1',
    '127.0.0.1:4173',
    '127.1.2.3:80',
    '[::1]',
    '[::1]:4173',
  ])('knows %s as this machine', (host) => {
    for (const listening of ['127.0.0.1', '::1', 'localhost']) expect(ownHosts(listening)(host)).toBe(true)
  })

  it.each([
    '',
    'example.org',
    '127.example.org',
    '127.0.0.1.example.org',
    '10.0.0.1:4173',
    '[::2]',
    '::1.example',
    '127.0.0.1:999999',
  ])('does not take %s for this machine when it listens to itself only', (host) => {
    expect(ownHosts('127.0.0.1')(host)).toBe(false)
  })

  it('takes any literal address and its own names when others may reach it, but no other name', () => {
    const isOwn = ownHosts('0.0.0.0')
    for (const host of [
      '192.168.1.20:4173',
      '[fe80::1]:4173',
      'localhost',
      `${hostname()}:4173`,
      `${hostname()}.local`,
    ])
      expect(isOwn(host)).toBe(true)
    for (const host of ['example.org', 'rebound.example:4173', '192.168.1.20.example'])
      expect(isOwn(host)).toBe(false)
  })
})
