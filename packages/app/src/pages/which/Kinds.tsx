import { type Choice, groupKinds, type KindGroup } from '@neckfall/engine';
import { Fold } from '../../controls/Fold.tsx';
import { asked } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { InTurn } from '../../turns/InTurn.tsx';
import { KindText } from './KindText.tsx';

/** Kinds in words, best first; those that the years cannot tell apart stand together under one head. */
export function Kinds({ choices, all }: { choices: readonly Choice[]; all: readonly Choice[] }) {
  const { say } = voice.value;
  const levels = levelsOf(groupKinds(choices));
  return (
    <Fold id="kinds" title={say('app.which.kinds')} open={asked.value.class !== null}>
      <InTurn>
        {levels.map((groups, at) => {
          const [{ choices: first }] = groups;
          const { rank, summary } = first[0];
          return (
            <section key={rank} class="level" aria-labelledby={`level-${rank}`}>
              <h3 id={`level-${rank}`}>
                {say(at === 0 ? 'app.which.level-best' : 'app.which.level-next', {
                  count: groups.length,
                  years: summary.years,
                })}
              </h3>
              <InTurn>
                {groups.map((group) => (
                  <KindText key={`${group.type} ${group.start}`} group={group} all={all} />
                ))}
              </InTurn>
            </section>
          );
        })}
      </InTurn>
    </Fold>
  );
}

/** Groups whose best share a rank. */
function levelsOf(groups: readonly KindGroup[]): KindGroup[][] {
  const levels: KindGroup[][] = [];
  for (const group of groups) {
    const level = levels.at(-1);
    if (level && level[0].choices[0].rank === group.choices[0].rank) level.push(group);
    else levels.push([group]);
  }
  return levels;
}
