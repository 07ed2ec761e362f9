import { Command, Help, type Option } from 'commander'
import { calledOn } from './called.ts'
import { COURSE, listed } from './command-words.ts'
import type { Machine } from './machine.ts'
import { roundCommands } from './round-commands.ts'

/**
 * The words of `marram`: commands, options and what they say of themselves. `done` takes the exit code of the
 * command that ran. Only help and the version are said here, to `say`; everything else comes back as an error.
 */
export function commandLine(
  machine: Machine,
  done: (exitCode: number) => void,
  say: (text: string) => void,
): Command {
  const called = calledOn(machine, done)
  const program = new Command('marram')
    .description('Plans a golf hole for one player and says when it is too close to call.')
    .version(machine.version, '--version', 'print the version')
    .helpOption('--help', 'print this help')
    .helpCommand(false)
    .option('--json', 'one JSON document on standard output and nothing else, in SI')
    .option('--units <yards|metres>', 'lengths for people (yards unless given)')
    .option('--quiet', 'print only the answer')
    .exitOverride()
    .configureOutput({ writeOut: say, writeErr: () => undefined })
    .configureHelp({ optionDescription: ownWords })

  program
    .command('import')
    .description('open map data, GeoJSON or a typed hole table → course file and report')
    .argument('<source...>', 'OSM XML, Overpass JSON, GeoJSON, or a hole table (.csv)')
    .requiredOption('--out <file>', 'the course file to write (.geojson)')
    .option('--elevation <file>', 'heights of tees and greens: GeoTIFF, or an SRTM tile (.hgt or .zip)')
    .action(called(async () => (await import('./import-command.ts')).importCommand))

  program
    .command('check')
    .description('the faults of a course file, with place and advice')
    .argument('<course>', COURSE)
    .action(called(async () => (await import('./check-command.ts')).checkCommand))

  program
    .command('measure')
    .description('a hole as numbers: length, every hazard, widths, front, middle and back')
    .argument('<course>', COURSE)
    .requiredOption('--hole <ref>', 'the hole, by its number or name on the card')
    .option('--tee <name>', 'the tee markers (the nearest to the start of the line unless given)')
    .option('--day <file>', 'the conditions of the day (.day.json): pin, markers and how long the hole plays')
    .action(called(async () => (await import('./measure-command.ts')).measureCommand))

  program
    .command('plan')
    .description('what to play on a hole, what every other club costs, and what would change it')
    .argument('<course>', COURSE)
    .requiredOption(
      '--player <file>',
      'the player file (.player.json); once for each of several players',
      listed,
    )
    .requiredOption('--hole <ref|all>', 'the hole, or all for the round')
    .option('--tee <name>', 'the tee markers (the nearest to the start of the line unless given)')
    .option('--day <file>', 'the conditions of the day (.day.json)')
    .option('--pins <file>', 'the pin sheet of the day, typed a line a hole: 7: 14 on, 6 left')
    .option('--wind <from:speed>', 'into:7, behind:7, left:7 or right:7, metres a second')
    .option('--pin <place>', 'front, middle, back, or X,Y in the hole frame')
    .option('--from <x,y>', 'where the ball lies: metres right of the line and on, or yards as 4yd,214yd')
    .option(
      '--lie <lie>',
      'what the ball sits in there (as the ground unless given); first-cut:flier, rough:good, rough:down, bunker:plugged and bare say how it sits',
    )
    .option('--stance <slopes>', 'slopes under the feet, degrees: uphill:5 or downhill:5, above:3 or below:3')
    .option('--club <name>', 'play this club now, and see what it costs')
    .option(
      '--objective <what>',
      'strokes (unless given), points, match, or at-most:K for the chance of K strokes or fewer on the hole',
    )
    .option(
      '--played <count>',
      'strokes used on the hole before this one, penalties counted (0 unless given)',
    )
    .option(
      '--strokes-received <count>',
      'handicap strokes on the hole (by the card unless given), −1 for one given',
    )
    .option(
      '--through <hole>',
      'at-most:K and match count over this hole and all to that one (this hole alone unless given)',
    )
    .option('--up <count>', 'holes up in the match, −1 for one down (0 unless given)')
    .option('--opponent <file>', 'whom the match is against (.player.json)')
    .option('--opponent-score <count>', 'or the strokes that the opponent takes on the hole')
    .option('--draws <count>', 'draws of the uncertain numbers of the player, 0 for none')
    .option('--quick', 'coarse settings without draws: in half the time or less, some 0.1 of a stroke rough')
    .option('--no-flips', 'leave out what would change the plan, which takes most of the time')
    .option('--picture <file>', 'write a drawing of the plan (.svg)')
    .option(
      '--workers <count>',
      'threads for a round or several players (as many as cores unless given; 0 = none)',
    )
    .option('--json-lines', 'one line of JSON a hole and player, each as soon as it is planned')
    .action(called(async () => (await import('./plan-command.ts')).planCommand))

  roundCommands(program, called)

  program
    .command('relief')
    .description('every option that the Rules give a ball, with the best spot of each and what it costs')
    .argument('<course>', COURSE)
    .requiredOption('--player <file>', 'the player file (.player.json)')
    .requiredOption('--hole <ref>', 'the hole, by its number or name on the card')
    .option('--from <x,y>', 'where the last stroke was made (the tee unless given)')
    .option(
      '--ball <x,y>',
      'where the ball lies, in water or out of bounds too: metres, or yards as 4yd,214yd',
    )
    .option('--crossed <x,y>', 'where it was seen to cross the edge of the water or the boundary')
    .option('--lost', 'the ball is not found (then --ball is where it is thought to lie)')
    .option('--out', 'the ball is out of bounds')
    .option('--unplayable', 'the player declares the ball unplayable')
    .option('--tee <name>', 'the tee markers (the nearest to the start of the line unless given)')
    .option('--day <file>', 'the conditions of the day (.day.json)')
    .option('--pin <place>', 'front, middle, back, or X,Y in the hole frame')
    .option('--picture <file>', 'write a chart of spots and relief areas (.svg)')
    .action(called(async () => (await import('./relief-command.ts')).reliefCommand))

  program
    .command('thumb')
    .description('where each rule of thumb is right, indifferent or wrong on a hole, and by how much')
    .argument('<course>', COURSE)
    .requiredOption('--player <file>', 'the player file (.player.json)')
    .requiredOption('--hole <ref>', 'the hole, by its number or name on the card')
    .option('--tee <name>', 'the tee markers (the nearest to the start of the line unless given)')
    .option('--day <file>', 'the conditions of the day (.day.json)')
    .option('--wind <from:speed>', 'into:7, behind:7, left:7 or right:7, metres a second')
    .option('--pin <place>', 'front, middle, back, or X,Y in the hole frame')
    .option(
      '--lie <lies>',
      'what the ball sits in along the hole, commas between (fairway,rough unless given)',
    )
    .action(called(async () => (await import('./thumb-command.ts')).thumbCommand))

  program
    .command('bag')
    .description(
      'what each club of a bag is for on a course, what it would cost to leave it out, and its gaps',
    )
    .argument('<course>', COURSE)
    .requiredOption('--player <file>', 'the player file (.player.json)')
    .option('--hole <ref|all>', 'the hole (all unless given)', 'all')
    .option('--tee <name>', 'the tee markers (the nearest to the start of the line unless given)')
    .option('--day <file>', 'the conditions of the day (.day.json)')
    .option('--workers <count>', 'threads (as many as cores unless given; 0 = none)')
    .action(called(async () => (await import('./bag-command.ts')).bagCommand))

  program
    .command('book')
    .description('the printed plan of a round: cards to fold, a pocket book, a pin sheet, a log (.pdf)')
    .argument('<course>', COURSE)
    .option(
      '--player <file>',
      'the player file (.player.json); once for each of several players; not asked for a pin sheet or a log',
      listed,
      [],
    )
    .requiredOption('--out <file>', 'the file to write (.pdf)')
    .option('--hole <ref|all>', 'the hole (all unless given)', 'all')
    .option('--tee <name>', 'the tee markers (the nearest to the start of the line unless given)')
    .option('--day <file>', 'the conditions of the day (.day.json)')
    .option('--pins <file>', 'the pin sheet of the day, typed a line a hole: 7: 14 on, 6 left')
    .option(
      '--for <practice|counting>',
      'where it is carried (practice unless given): pages that break the Rules are refused',
    )
    .option('--paper <a4|letter>', 'the paper (a4 unless given)')
    .option(
      '--kind <kind>',
      'card (unless given), large for large print, junior for few words, caddie for numbers without advice, book for a pocket book with pictures, pins for a pin sheet, log for a line a hole to write the round down',
    )
    .option('--text-only', 'words alone, for events that allow no other book than the Committee’s')
    .option('--green-scale <1:N>', 'greens at this scale or smaller (1:480 unless given)')
    .option('--fold', 'marks where to fold a card; a book in the order for folding and stapling')
    .option('--draws <count>', 'draws of the uncertain numbers of the player, 0 for none')
    .option('--quick', 'coarse settings without draws: in half the time or less, some 0.1 of a stroke rough')
    .option('--workers <count>', 'threads (as many as cores unless given; 0 = none)')
    .action(called(async () => (await import('./book-command.ts')).bookCommand))

  program
    .command('foursomes')
    .description('who of a pair takes the odd and the even tees, and on which holes it matters')
    .argument('<course>', COURSE)
    .option('--player <file>', 'the player file (.player.json); once for each of the two', listed, [])
    .option('--hole <ref|all>', 'the hole (all unless given)', 'all')
    .option('--tee <name>', 'the tee markers (the nearest to the start of the line unless given)')
    .option('--day <file>', 'the conditions of the day (.day.json)')
    .option('--out <file>', "write the captain's sheet (.pdf)")
    .option('--for <practice|counting>', 'where the sheet is carried (practice unless given)')
    .option('--paper <a4|letter>', 'the paper (a4 unless given)')
    .option('--workers <count>', 'threads (as many as cores unless given; 0 = none)')
    .action(called(async () => (await import('./foursomes-command.ts')).foursomesCommand))

  program
    .command('pattern')
    .description('what shots change in a player, club by club, and how sure it is')
    .argument('<player>', 'the player file (.player.json)')
    .option('--shots <file...>', 'tables of shots (.csv)')
    .option(
      '--round <file>',
      'a round on the course (.round.json) or a typed paper log; once for each of several rounds',
      listed,
      [],
    )
    .option(
      '--day <file>',
      'the conditions of a round’s day (.day.json), found by its date; once for each day',
      listed,
      [],
    )
    .option('--tee <name>', 'the tee markers of the rounds (as each says unless given)')
    .option('--columns <list>', 'what other columns are: Club=club,Carry=carry_yd,Side=offline_yd')
    .option('--mapping <file>', 'the same from a file: {"Club": "club", "Carry": "carry_yd"}')
    .option('--out <file>', 'the player file to write (.player.json)')
    .option('--picture <file>', 'write a drawing of the bag at true scale (.svg)')
    .option('--club <name>', 'draw the pattern of this club instead, before and after, with its shots')
    .option(
      '--course <file>',
      'a course: where the rounds were played, which plans change, and what the old ones would cost',
    )
    .option('--hole <ref|all>', 'the hole of that course (all unless given)')
    .option('--full', 'find the plans of the rounds by full settings, which takes ten times as long')
    .option('--workers <count>', 'threads for the rounds (as many as cores unless given; 0 = none)')
    .action(called(async () => (await import('./pattern-command.ts')).patternCommand))

  const player = program
    .command('player')
    .description('everything the store keeps of a player: take it out, or remove it')
    .helpOption('--help', 'print this help')
  player
    .command('export')
    .description('a player with all plans and rounds, as one file')
    .argument('<id>', 'the id of the player in the store')
    .requiredOption('--out <file>', 'the file to write (.json)')
    .option('--store <file>', 'the file of the store')
    .action(called(async () => (await import('./player-command.ts')).exportPlayer))
  player
    .command('delete')
    .description('remove a player with all plans and rounds for good')
    .argument('<id>', 'the id of the player in the store')
    .option('--yes', 'do it')
    .option('--store <file>', 'the file of the store')
    .action(called(async () => (await import('./player-command.ts')).deletePlayer))

  program
    .command('share')
    .description('documents of the store as one file for another machine; a card goes with its round')
    .argument('<document...>', 'like players/anna, rounds/round-2026-05-02-k3x7q1, courses/links')
    .requiredOption('--out <file>', 'the file to write (.json)')
    .option('--store <file>', 'the file of the store')
    .action(called(async () => (await import('./share-command.ts')).shareCommand))

  program
    .command('take')
    .description(
      'take a file of another machine into the store: copies of a round are merged, nothing is lost',
    )
    .argument('<file>', 'what share or player export wrote, or a round, player or course file')
    .option('--store <file>', 'the file of the store')
    .action(called(async () => (await import('./share-command.ts')).takeCommand))

  program
    .command('profile')
    .description('ten questions → a first profile of a player, marked as a guess, and how sure it is')
    .option('--out <file>', 'the player file to write (.player.json)')
    .option('--answers <file>', 'the answers as JSON, instead of asking them on the terminal')
    .action(called(async () => (await import('./profile-command.ts')).profileCommand))

  program
    .command('test-day')
    .description('the sheet of the short-game and putting test, and what its results say of a player')
    .argument('<player>', 'the player file (.player.json)')
    .option('--sheet <file>', 'write the sheet to print (.svg)')
    .option('--results <file>', 'what was played (.csv): station,holed,leaves_ft or leaves_m')
    .option('--out <file>', 'write the player with what was learned (.player.json)')
    .option('--picture <file>', 'write the curves of putting and short game by distance (.svg)')
    .action(called(async () => (await import('./test-day-command.ts')).testDayCommand))

  program
    .command('serve')
    .description('the hole desk, on this machine')
    .option('--port <number>', 'the first port to try (4173 unless given)')
    .option('--host <address>', 'the address to listen on (this machine only unless given)')
    .option('--store <file>', 'the file of the store')
    .option(
      '--map <address>',
      'tiles of a map to trace holes over, with {z}, {x} and {y} in their address, as its owner allows',
    )
    .option('--map-credit <words>', 'what the owner of the map wants said beside it')
    .option('--map-zoom <number>', 'the nearest level that the map has (19 unless given)')
    .action(called(async () => (await import('./serve-command.ts')).serveCommand))

  return program
}

/** What an option is for, without the empty list that stands for one that is given as often as one likes. */
function ownWords(option: Option): string {
  return new Help().optionDescription(option).replace(' (default: [])', '')
}
