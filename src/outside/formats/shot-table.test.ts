import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Failure } from '#faults/failure.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import { readMapping, readMappingFile, readShotTables, type ShotReading } from './shot-table.ts'

function read(text: string, columns?: string): ShotReading {
  return readShotTables([{ text, name: 'a.csv' }], columns === undefined ? null : readMapping(columns))
}

function failure(act: () => unknown): Failure {
  try {
    act()
  } catch (error) {
    return error as Failure
  }
  throw new Error('nothing was thrown')
}

const SHOT: ShotRecord = {
  date: null,
  club: '7-iron',
  lie: null,
  carryMetres: null,
  totalMetres: null,
  offlineMetres: null,
  strike: null,
}

describe('our own columns', () => {
  it('are read without questions, any subset with the club and one distance', () => {
    const { shots, faults } = read(
      'date,club,lie,carry_m,total_m,offline_m,planned,strike\n2026-05-02,7i,rough:down,120.5,128,-3,full,good\n,PW,,,90,,,fat\n',
    )
    expect(faults).toEqual([])
    expect(shots).toEqual([
      {
        date: '2026-05-02',
        club: '7-iron',
        lie: 'rough',
        carryMetres: 120.5,
        totalMetres: 128,
        offlineMetres: -3,
        strike: 'good',
      },
      { ...SHOT, club: 'pitching-wedge', totalMetres: 90, strike: 'mishit' },
    ])
    // 1 yd = 0.9144 m: international yard and pound agreement of 1959.
    expect(read('club,total_yd\n7-iron,150').shots).toEqual([{ ...SHOT, totalMetres: 137.16 }])
  })

  it('may stand below other lines, have their units in a row of their own, and be saved by a spreadsheet', () => {
    const text =
      'sep=;\r\n# a remark\r\nSpieler: Wren\r\n\r\nClub;Carry;Offline\r\n;[m];[m]\r\n"7 iron";"150,5";-3,25\r\n'
    expect(read(`\uFEFF${text}`).shots).toEqual([{ ...SHOT, carryMetres: 150.5, offlineMetres: -3.25 }])
  })

  it('name a column that is passed over, and ask when one of them looks like the side', () => {
    expect(read('club,carry_m,Ball Speed\n7i,120,50').faults).toMatchObject([
      { severity: 'note', code: 'MAR-SHOTS-013', place: 'a.csv, line 1' },
    ])
    expect(failure(() => read('club,carry_m,Side\n7i,120,50')).code).toBe('MAR-SHOTS-001')
  })

  it('ask for a unit that neither heading nor cell says', () => {
    expect(failure(() => read('club,carry\n7i,120'))).toMatchObject({ code: 'MAR-SHOTS-004' })
    expect(read('club,carry\n7i,120 m').shots[0]).toMatchObject({ carryMetres: 120 })
  })
})

describe('any other columns', () => {
  const text = 'Nr,Schläger,Flugweite [m],Seite,Zeit\n1,Eisen 7,121.4,3.5 L,14:01\n2,Holz 3,160.2,R 4,14:02\n'

  it('are asked about, with a mapping to copy and a ? for every unit that is not told', () => {
    const { code, message, where } = failure(() => read(text))
    expect({ code, where }).toEqual({ code: 'MAR-SHOTS-001', where: 'a.csv' })
    expect(message).toContain('Schläger (Eisen 7), Flugweite [m] (121.4), Seite (3.5 L)')
    expect(message).toContain('--columns "Schläger=club,Flugweite [m]=carry_m,Seite=offline_?:left-negative"')
    expect(failure(() => read(text, 'Schläger=club,Flugweite [m]=carry_m,Seite=offline_?')).code).toBe(
      'MAR-SHOTS-002',
    )
  })

  it('are read by the mapping that was copied, in text or JSON', () => {
    const shots = [
      { ...SHOT, carryMetres: 121.4, offlineMetres: -3.5 },
      { ...SHOT, club: '3-wood', carryMetres: 160.2, offlineMetres: 4 },
    ]
    expect(read(text, 'Schläger=club,Flugweite [m]=carry_m,Seite=offline_m').shots).toEqual(shots)
    const mapping = readMappingFile({
      text: '{"Schläger":"club","Flugweite":"carry_m","#4":"offline_m"}',
      name: 'm.json',
    })
    expect(readShotTables([{ text, name: 'a.csv' }], mapping).shots).toEqual(shots)
  })

  it('may have no header at all', () => {
    const { shots } = read('7i,120\n8i,110', '#1=club,#2=carry_m')
    expect(shots.map(({ club, carryMetres }) => [club, carryMetres])).toEqual([
      ['7-iron', 120],
      ['8-iron', 110],
    ])
  })

  it('have the side with left as plus or minus, or as an angle, and distances straight or along the line', () => {
    const table = 'C,D,S\n7i,100,10'
    const shot = (columns: string): Partial<ShotRecord> => read(table, columns).shots[0] ?? {}
    expect(shot('C=club,D=carry_m,S=offline_m:left-positive').offlineMetres).toBe(-10)
    // 10° off: 100 m along the line go 17.63 m across, 100 m of straight flight 98.48 m along and 17.36 m across.
    expect(shot('C=club,D=carry_m,S=offline_deg').offlineMetres).toBeCloseTo(17.633, 3)
    const straight = shot('C=club,D=carry_m:straight,S=offline_deg')
    expect(straight.carryMetres).toBeCloseTo(98.481, 3)
    expect(straight.offlineMetres).toBeCloseTo(17.365, 3)
    expect(shot('C=club,D=carry_m:straight,S=offline_m').carryMetres).toBeCloseTo(Math.sqrt(9900), 9)
  })

  it.each([
    ['Club', 'does not say what a column is'],
    ['Club=club', 'no column is the carry'],
    ['A=club,B=carry_furlongs', 'is no meaning'],
    ['A=club,B=carry_m,C=carry_yd', 'two columns are carry'],
    ['A=club:day-first,B=carry_m', 'says nothing about club'],
  ])('refuse the mapping %s', (columns, reason) => {
    const { code, message } = failure(() => readMapping(columns))
    expect(code).toBe('MAR-SHOTS-002')
    expect(message).toContain(reason)
  })

  it('say so when a column that was named is not there, or was given another unit than its heading', () => {
    expect(failure(() => read(text, 'Schläger=club,Weite=carry_m')).code).toBe('MAR-SHOTS-005')
    expect(read(text, 'Schläger=club,Flugweite [m]=carry_yd').faults).toMatchObject([
      { code: 'MAR-SHOTS-015', severity: 'warning' },
    ])
  })
})

describe('dates', () => {
  const dates = (cells: readonly string[], order = ''): readonly (string | null)[] =>
    read(
      `Day;Club;Carry\n${cells.map((cell) => `${cell};7i;120`).join('\n')}`,
      `Day=date${order},Club=club,Carry=carry_m`,
    ).shots.map(({ date }) => date)

  it('are read in the ways they are written', () => {
    const cells = ['2026-05-02', '2026-05-02T14:03:11Z', '2026/5/2', '02.05.2026', '2.5.26', '2 May 2026']
    expect(dates([...cells, 'May 2, 2026', '02-May-26'])).toEqual(Array(8).fill('2026-05-02'))
  })

  it('with slashes are settled by a day over 12, or asked about', () => {
    expect(dates(['5/6/2026', '13/6/2026'])).toEqual(['2026-06-05', '2026-06-13'])
    expect(dates(['5/6/2026', '6/13/2026'])).toEqual(['2026-05-06', '2026-06-13'])
    expect(dates(['5/6/2026'], ':day-first')).toEqual(['2026-06-05'])
    expect(failure(() => dates(['5/6/2026', '6/5/2026'])).code).toBe('MAR-SHOTS-018')
  })

  it('that are none leave the shot without a date', () => {
    const { shots, faults } = read('date,club,carry_m\n31.02.2026,7i,120\nsoon,7i,121\n')
    expect(shots.map(({ date }) => date)).toEqual([null, null])
    expect(faults.map(({ code, place }) => [code, place])).toEqual([
      ['MAR-SHOTS-011', 'a.csv, line 2'],
      ['MAR-SHOTS-011', 'a.csv, line 3'],
    ])
  })
})

describe('shots written in any layout', () => {
  const tenths = (least: number, most: number): fc.Arbitrary<number> =>
    fc.integer({ min: least * 10, max: most * 10 }).map((count) => count / 10)
  const shots = fc.array(
    fc.record({
      date: fc.option(fc.constantFrom('2026-03-14', '2026-11-30', '2025-07-01')),
      club: fc.constantFrom('driver', '5-hybrid', '7-iron', 'sand-wedge', '52-wedge'),
      lie: fc.option(fc.constantFrom('tee' as const, 'rough' as const, 'first-cut' as const)),
      carryMetres: tenths(180, 250),
      totalMetres: fc.option(tenths(250, 300)),
      offlineMetres: fc.option(tenths(-40, 40)),
      strike: fc.option(fc.constantFrom('good' as const, 'mishit' as const)),
    }),
    { minLength: 1, maxLength: 8 },
  )
  const layout = fc.record({
    delimiter: fc.constantFrom(',', ';', '\t'),
    decimal: fc.constantFrom('.', ','),
    lineEnd: fc.constantFrom('\n', '\r\n', '\r'),
    mark: fc.constantFrom('', '\uFEFF'),
    dates: fc.constantFrom('iso', 'dotted'),
    sides: fc.constantFrom('signed', 'reversed', 'letters'),
    nothing: fc.constantFrom('', '-', 'n/a'),
    order: fc.shuffledSubarray(['date', 'club', 'lie', 'carry', 'total', 'offline', 'strike', 'note'], {
      minLength: 8,
    }),
    unit: fc.constantFrom('m', 'cells'),
  })

  it('are the same shots when read', () => {
    fc.assert(
      fc.property(shots, layout, (written, form) => {
        const quote = (text: string): string =>
          /["\n,;\t]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
        const number = (value: number | null): string =>
          value === null
            ? form.nothing
            : `${String(value).replace('.', form.decimal)}${form.unit === 'cells' ? ' m' : ''}`
        const side = (value: number | null): string => {
          if (value === null || form.sides === 'signed') return number(value)
          if (form.sides === 'reversed') return number(value === 0 ? 0 : -value)
          return `${String(Math.abs(value)).replace('.', form.decimal)} ${value < 0 ? 'L' : 'R'}`
        }
        const cellOf = (shot: ShotRecord, column: string): string => {
          if (column === 'date') {
            const [year, month, day] = (shot.date ?? '').split('-')
            if (shot.date === null) return form.nothing
            return form.dates === 'iso' ? shot.date : `${day}.${month}.${year}`
          }
          if (column === 'carry') return number(shot.carryMetres)
          if (column === 'total') return number(shot.totalMetres)
          if (column === 'offline') return side(shot.offlineMetres)
          if (column === 'note') return 'a "note", with; marks'
          return shot[column as 'club' | 'lie' | 'strike'] ?? form.nothing
        }
        const lines = [
          form.order.map((column) => `My ${column}`),
          ...written.map((shot) => form.order.map((column) => cellOf(shot, column))),
        ]
        const text =
          form.mark +
          lines.map((cells) => cells.map(quote).join(form.delimiter)).join(form.lineEnd) +
          form.lineEnd
        const meaning: Readonly<Record<string, string>> = {
          carry: 'carry_m',
          total: 'total_m',
          offline: form.sides === 'reversed' ? 'offline_m:left-positive' : 'offline_m',
        }
        const columns = form.order
          .filter((column) => column !== 'note')
          .map((column) => `My ${column}=${meaning[column] ?? column}`)
          .join(',')
        const reading = read(text, columns)
        expect(reading.faults.filter(({ code }) => code !== 'MAR-SHOTS-016')).toEqual([])
        expect(reading.shots).toEqual(written)
      }),
    )
  })
})

describe('any text at all', () => {
  const scrap = fc.constantFrom(
    ...[
      'club',
      'carry_m',
      'date',
      'Side',
      'offline_deg',
      '7i',
      'PW',
      '120',
      '-3,5',
      '12 L',
      '5/6/26',
      '85°',
      '"',
      '""',
    ],
    ...[
      ',',
      ';',
      '\t',
      '|',
      '\n',
      '\r\n',
      '#',
      '# note',
      'sep=;',
      '\uFEFF',
      '\u0000',
      '∞',
      ' ',
      '150 yd',
      'Average',
    ],
  )
  const header = fc.constantFrom(
    '',
    'club,carry_m,offline_m\n',
    'date;club;total_yd;lie\n',
    'Club\tCarry\n\tyd\n',
  )

  it('is read row by row or refused in words', () => {
    fc.assert(
      fc.property(header, fc.array(scrap, { maxLength: 40 }), (start, scraps) => {
        try {
          const { rows, shots, repeated, setAside, unread, faults } = read(start + scraps.join(''))
          expect(shots.length + repeated + setAside + unread).toBe(rows)
          expect(faults.filter(({ severity }) => severity === 'error')).toHaveLength(unread)
          for (const { carryMetres, totalMetres, offlineMetres } of shots)
            for (const metres of [carryMetres, totalMetres, offlineMetres])
              expect(metres === null || Number.isFinite(metres)).toBe(true)
        } catch (error) {
          expect((error as Failure).code).toMatch(/^MAR-SHOTS-/)
        }
      }),
      { numRuns: 2000 },
    )
  })
})

describe('200,000 rows', () => {
  it('are all read, and all counted', () => {
    const days = Array.from({ length: 200 }, (_, index) =>
      new Date(Date.UTC(2026, 0, 1 + index)).toISOString().slice(0, 10),
    )
    const rows = Array.from({ length: 200_000 }, (_, index) => {
      const broken = index % 1000 === 7
      return `${days[index % 200]},${3 + (index % 7)}i,${broken ? 'far' : 120 + ((index * 7919) % 4001) / 100},${((index * 104_729) % 2003) / 100 - 10}`
    })
    const reading = read(`date,club,carry_m,offline_m\n${rows.join('\n')}`)
    expect(reading).toMatchObject({ rows: 200_000, unread: 200, setAside: 0, repeated: 0 })
    expect(reading.shots).toHaveLength(199_800)
    expect(reading.faults.filter(({ severity }) => severity === 'error')[199]?.place).toBe(
      'a.csv, line 199009',
    )
  })
})
