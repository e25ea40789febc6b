import '../../look/teach.css';
import { pagesToTeach } from '../../address/address.ts';
import { hrefTo } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';

/** What helps to explain onions to others, each with a line that says what it shows. */
export function Teach() {
  const { say } = voice.value;
  return (
    <>
      <h1>{say('app.teach')}</h1>
      <p>{say('app.teach.lead')}</p>
      <dl class="teach">
        {pagesToTeach.map((name) => (
          <div key={name}>
            <dt>
              <a href={hrefTo(name)}>{say(`app.page.${name}`)}</a>
            </dt>
            <dd>{say(`app.teach.${name}`)}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
