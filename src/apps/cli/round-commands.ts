import type { Command } from 'commander'
import type { Called } from './called.ts'
import { COURSE, listed } from './command-words.ts'

/** The commands for rounds that were played, added to `program`. */
export function roundCommands(program: Command, called: Called): void {
  program
    .command('recap')
    .description('a round that was played: what the choices cost, how it was struck, and what was luck')
    .argument('<course>', COURSE)
    .requiredOption('--player <file>', 'the player file as it was that day (.player.json)')
    .requiredOption('--round <file>', 'the round (.round.json) or a typed paper log')
    .option('--hole <ref|all>', 'the hole (all that were logged unless given)', 'all')
    .option('--tee <name>', 'the tee markers (as the round says unless given)')
    .option('--day <file>', 'the conditions of that day (.day.json)')
    .option('--today', 'hold it against these files, not against the card that a round of the phone carries')
    .option('--out <file>', 'write the sheet for the lesson (.pdf)')
    .option('--paper <a4|letter>', 'the paper (a4 unless given)')
    .option('--opponent <file>', 'whom the round was a match against (.player.json), with --opponent-round')
    .option('--opponent-round <file>', "the opponent's round or paper log")
    .option('--workers <count>', 'threads (as many as cores unless given; 0 = none)')
    .action(called(async () => (await import('./recap-command.ts')).recapCommand))

  program
    .command('score')
    .description(
      'the card of a side, or of two against each other: better ball, one ball by turns, scramble; strokes, points, match',
    )
    .argument('<course>', COURSE)
    .option('--player <file>', 'a player file (.player.json); once for each of the side', listed, [])
    .option(
      '--round <file>',
      "a round or typed paper log: each player's own in their order, or the one ball's",
      listed,
      [],
    )
    .option('--opponent <file>', 'a player file of the other side; as often as --player', listed, [])
    .option('--opponent-round <file>', 'a round of the other side; as often as --round', listed, [])
    .option('--play <form>', 'singles, four-ball, foursomes, greensomes, chapman or scramble', 'singles')
    .option('--by <count>', 'strokes, points, maximum, par or match', 'strokes')
    .option(
      '--maximum <limit>',
      'the most that counts on a hole: net-double-bogey (unless given), double-par, par+4 or strokes',
    )
    .option('--allowance <percent>', "the Committee's own, in place of the published one")
    .option('--gross', 'nobody receives strokes')
    .option('--tee <name>', 'the tee markers of all rounds (as each says unless given)')
    .action(called(async () => (await import('./score-command.ts')).scoreCommand))

  program
    .command('season')
    .description(
      'rounds taken together: the plan kept, what choices cost, what stands out and what is chance',
    )
    .argument('<course>', COURSE)
    .requiredOption('--player <file>', 'the player file as it was in these rounds (.player.json)')
    .requiredOption(
      '--round <file>',
      'a round (.round.json) or a typed paper log; once for each of several rounds',
      listed,
    )
    .option(
      '--before <file>',
      'a round of the season before, to say what changed; once for each of several rounds',
      listed,
      [],
    )
    .option('--tee <name>', 'the tee markers (as each round says unless given)')
    .option(
      '--day <file>',
      'the conditions of a day (.day.json), found by its date; once for each day',
      listed,
      [],
    )
    .option('--full', 'solve each hole by full settings, which takes ten times as long')
    .option('--out <file>', 'write the letter to the player (.pdf)')
    .option('--paper <a4|letter>', 'the paper (a4 unless given)')
    .option('--workers <count>', 'threads (as many as cores unless given; 0 = none)')
    .action(called(async () => (await import('./season-command.ts')).seasonCommand))

  program
    .command('club')
    .description(
      'rounds of many members together, without names: where strokes are lost, holes, tees, hole locations',
    )
    .argument('<course>', COURSE)
    .requiredOption('--player <file>', 'a member (.player.json); once for each', listed)
    .requiredOption('--round <file>', 'a round that names its player (.round.json); once for each', listed)
    .option(
      '--day <file>',
      'the conditions of a day (.day.json), found by its date; once for each day',
      listed,
      [],
    )
    .option('--least <count>', 'members behind every figure at least (5 unless given, 3 at least)')
    .option('--full', 'solve each hole by full settings, which takes ten times as long')
    .option('--out <file>', 'write the page for the committee (.pdf)')
    .option('--paper <a4|letter>', 'the paper (a4 unless given)')
    .option('--workers <count>', 'threads (as many as cores unless given; 0 = none)')
    .action(called(async () => (await import('./club-command.ts')).clubCommand))

  program
    .command('practice')
    .description('what an hour of practice is worth to a player on a course, part by part')
    .argument('<course>', COURSE)
    .requiredOption('--player <file>', 'the player file (.player.json)')
    .option('--hole <ref|all>', 'the hole (all unless given)', 'all')
    .option('--tee <name>', 'the tee markers (the nearest to the start of the line unless given)')
    .option('--day <file>', 'the conditions of the day (.day.json)')
    .option('--hours <count>', 'hours of practice until the re-test (10 unless given)')
    .option('--from <date>', 'the day practice begins, 2026-11-25; the re-test is dated from it')
    .option('--weeks <count>', 'weeks until the re-test (6 unless given)')
    .option('--notes <file>', "the professional's own rates and drills (.practice.json)")
    .option('--out <file>', 'write the sheet of what to practise (.pdf)')
    .option('--paper <a4|letter>', 'the paper (a4 unless given)')
    .option('--workers <count>', 'threads (as many as cores unless given; 0 = none)')
    .action(called(async () => (await import('./practice-command.ts')).practiceCommand))
}
