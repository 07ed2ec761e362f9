/** Files as a person might hand them over: whole, damaged, empty, and of a wrong kind. */
export const FILES: readonly { readonly name: string; readonly mimeType: string; readonly text: string }[] = [
  {
    name: 'hole.csv',
    mimeType: 'text/csv',
    text: 'hole,what,side,from_yd,to_yd,near_yd,far_yd,note\n4,tee,,0,,,,"white, card 310 yd"\n4,bunker,left,180,200,12,20,\n4,green,,296,324,,26,par 4\n',
  },
  {
    name: 'half.csv',
    mimeType: 'text/csv',
    text: 'hole,what,side,from_m,to_m,near_m,far_m,note\n2,lava,,x,,,,\n2,green,,140,120,,20,par 3\n2,bunk',
  },
  {
    name: 'shots.csv',
    mimeType: 'text/csv',
    text: 'date,club,lie,carry_yd,offline_yd\n2026-04-18,7-iron,fairway,148,-4\n2026-04-18,7-iron,fairway,152,7\n,,,,\n2026-99-99,9-iron,moon,abc,\n',
  },
  {
    name: 'walk.gpx',
    mimeType: 'application/gpx+xml',
    text: `<gpx version="1.1" xmlns="http://www.topografix.com/GPX/1/1"><wpt lat="55.9" lon="-2.1"><name>tee</name></wpt>
<trk><name>green</name><trkseg>${['55.9030 -2.1', '55.9032 -2.1', '55.9032 -2.0997', '55.9030 -2.0997'].map((at) => `<trkpt lat="${at.split(' ')[0]}" lon="${at.split(' ')[1]}"/>`).join('')}</trkseg></trk>
<trk><name>?</name><trkseg><trkpt lat="x" lon="2"/><trkpt lat="55.9" lon="-2.1"/></trkseg></trk></gpx>`,
  },
  { name: 'empty.csv', mimeType: 'text/csv', text: '' },
  { name: 'plan.png', mimeType: 'image/png', text: 'no picture at all' },
  {
    name: 'plan.svg',
    mimeType: 'image/svg+xml',
    text: '<svg xmlns="http://www.w3.org/2000/svg" width="300" height="500"><rect width="300" height="500" fill="#9b9"/><circle cx="150" cy="60" r="20" fill="#fff"/></svg>',
  },
]
