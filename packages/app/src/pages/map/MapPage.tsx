import { atlasLead, atlasRows } from '@neckfall/answers';
import type { LandOutline } from '@neckfall/data';
import { fetchLandOutline } from '@neckfall/data/browser';
import type { GridPoint, Region } from '@neckfall/engine';
import { AtlasKey, discPxOf, type MapFrame, mapFrame, mapKeyWords } from '@neckfall/pictures';
import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { AnswerFoot } from '../../controls/AnswerFoot.tsx';
import { Cautions } from '../../controls/Cautions.tsx';
import { Fault } from '../../controls/Fault.tsx';
import { FitWidth } from '../../controls/FitWidth.tsx';
import { TownSearch } from '../../controls/TownSearch.tsx';
import { Twin } from '../../controls/Twin.tsx';
import { asked, go } from '../../state/route.ts';
import { voice } from '../../state/settings.ts';
import { today } from '../../state/today.ts';
import '../../look/atlas.css';
import { AtlasCanvas } from './AtlasCanvas.tsx';
import { leadsOf } from './atlas-held.ts';
import { Choices } from './Choices.tsx';
import { HowMapsAreMade } from './HowMapsAreMade.tsx';
import { type Cross, regionOf, showsAsked, viewAsked, viewText } from './map-asked.ts';
import { PointAnswer } from './PointAnswer.tsx';
import { PointLine } from './PointLine.tsx';
import { ProgressLine } from './ProgressLine.tsx';
import { dotsPerPx, drawnStep, stepsFor } from './steps.ts';
import { TakeMap } from './TakeMap.tsx';
import { type Listener, useAtlas } from './use-atlas.ts';

/** What stands out on half the Earth or more is worked out from points so far apart: there are enough of them, degrees. */
const leadFromDeg = 2;
const isWide = ({ westDeg, eastDeg }: Region) => eastDeg - westDeg >= 180;
const columns = ['band', 'kind', 'good', 'start', 'tops', 'size', 'points'] as const;
/** A map is no taller than this share of its width, nor than a screen, px. */
const tallest = { share: 1.15, px: 620 };

/** Which onion does best where: a map of any part of the Earth that fills in while one watches. */
export function MapPage() {
  const speaker = voice.value;
  const { say } = speaker;
  const shows = showsAsked();
  const { view, cross } = viewAsked();
  const { onlyClass, onlyStart, at } = asked.value;
  const regionKey = view === 'here' ? `here ${at?.latitudeDeg} ${at?.longitudeDeg}` : view;
  const region = useMemo(() => regionOf(view), [regionKey]);
  const steps = useMemo(() => stepsFor(region), [region]);
  const listener = useRef<Listener | null>(null);
  const atlas = useAtlas(regionKey, region, steps, today.value, listener);
  const { held, wholeDeg } = atlas;
  const leads = useMemo(
    () => leadsOf(held, { class: onlyClass, start: onlyStart }),
    [held, onlyClass, onlyStart],
  );
  const [outline, setOutline] = useState<LandOutline | null>(null);
  const [failed, setFailed] = useState<string | null>(null);
  useEffect(() => {
    fetchLandOutline().then(setOutline, (error: Error) => setFailed(error.message));
  }, []);
  const hovered = useMemo(() => signal<GridPoint | null>(null), []);
  const takeCross = useCallback((point: GridPoint, name: string | null = null) => {
    const round = (degrees: number) => Math.round(degrees * 100) / 100;
    const { latitudeDeg, longitudeDeg } = point;
    const set: Cross =
      name === null
        ? { latitudeDeg: round(latitudeDeg), longitudeDeg: round(longitudeDeg), name }
        : { latitudeDeg, longitudeDeg, name };
    go({ view: viewText(viewAsked().view, set) }, { replace: true });
  }, []);

  const leadDeg = Math.max(wholeDeg ?? steps[0], isWide(region) ? leadFromDeg : 0);
  const points = useMemo(() => {
    if (wholeDeg === null) return null;
    return leads.leadsOn(region, leadDeg);
  }, [leads, region, wholeDeg]);
  const told = useMemo(() => {
    if (!points) return null;
    if (points.length === 0) return { lead: [say('app.atlas.no-points')], rows: [] };
    return {
      lead: atlasLead(points, { shows, class: onlyClass }, speaker),
      rows: atlasRows(points, speaker).map((row) => columns.map((column) => row[column])),
    };
  }, [points, shows, onlyClass, speaker]);
  const lead = told?.lead ?? null;
  const among = amongText();
  const regionName = say(`app.atlas.view.${view}`);
  if (failed !== null) return <Fault reason={failed} />;
  return (
    <div class="atlas-page">
      <h1 class="answer" data-waiting={lead === null ? true : undefined}>
        {lead?.[0] ?? say('app.atlas.coming', { region: regionName })}
      </h1>
      {lead && lead.length > 1 && <p>{lead.slice(1).join(' ')}</p>}
      {points && (
        <p class="hint">
          {say('app.atlas.of', {
            region: regionName,
            among,
            points: points.length,
            step: speaker.number(leadDeg, 1),
          })}
        </p>
      )}
      <Choices />
      <div class="atlas-spread">
        <div class="atlas-seen">
          {outline ? (
            <FitWidth>
              {(width) => (
                <Framed width={width} region={region}>
                  {(frame) => {
                    const drawn = Math.max(wholeDeg ?? steps[0], drawnStep(steps, frame, dotsPerPx()));
                    const words = mapKeyWords(speaker);
                    return (
                      <>
                        <AtlasCanvas
                          frame={frame}
                          outline={outline}
                          steps={steps}
                          shows={shows}
                          leads={leads}
                          wholeDeg={wholeDeg}
                          workingDeg={atlas.working?.stepDeg ?? null}
                          listener={listener}
                          cross={cross}
                          onCross={takeCross}
                          onHover={(point) => {
                            hovered.value = point;
                          }}
                          label={say('app.atlas.label', { region: regionName })}
                          describedBy="atlas-keys atlas-point"
                        />
                        <PointLine hovered={hovered} stepDeg={drawn} leads={leads} />
                        <AtlasKey
                          shows={shows}
                          words={words}
                          width={width}
                          discPx={discPxOf(drawn, frame)}
                          summary={say('picture.atlas.summary', {
                            region: regionName,
                            shows,
                            lead: lead?.join(' ') ?? '',
                          })}
                        />
                      </>
                    );
                  }}
                </Framed>
              )}
            </FitWidth>
          ) : (
            <p role="status" data-waiting>
              {say('app.map.loading')}
            </p>
          )}
          <ProgressLine atlas={atlas} finest={steps.at(-1)!} />
        </div>
        <section class="atlas-point" aria-labelledby="atlas-point-head">
          <h2 id="atlas-point-head">{say('app.atlas.point')}</h2>
          <p id="atlas-keys" class="hint">
            {say('app.atlas.point.how')}
          </p>
          <div id="atlas-point" aria-live="polite">
            {cross && <PointAnswer key={`${cross.latitudeDeg} ${cross.longitudeDeg}`} cross={cross} />}
          </div>
          <TownSearch onTown={(town) => takeCross(town, town.name)} />
        </section>
      </div>
      {points && points.length > 0 && (
        <>
          <Twin
            caption={say('app.atlas.table', { region: regionName, among })}
            head={columns.map((column) => say(`atlas.column.${column}`))}
            rows={told?.rows ?? []}
            note={say('app.atlas.table.note')}
          />
          <TakeMap
            region={region}
            regionName={regionName}
            shows={shows}
            outline={outline}
            leads={leads}
            wholeDeg={wholeDeg!}
            lead={lead!.join(' ')}
          />
        </>
      )}
      <Cautions of={['app.caution.map', 'app.caution.promise']} />
      <HowMapsAreMade finest={steps.at(-1)!} from={held.from} />
      <AnswerFoot />
    </div>
  );
}

type FramedProps = { width: number; region: Region; children: (frame: MapFrame) => ComponentChildren };

/** Lays the region out for the width there is, once. */
function Framed({ width, region, children }: FramedProps) {
  const frame = useMemo(
    () => mapFrame(region, width, Math.min(tallest.px, tallest.share * width)),
    [region, width],
  );
  return <>{children(frame)}</>;
}

/** Which onions the map is of, where not of all. */
function amongText(): string {
  const { onlyClass, onlyStart } = asked.value;
  return voice.value.say('app.atlas.among', {
    kind: onlyClass === null ? 'any' : voice.value.say(`class.${onlyClass}`),
    way: onlyStart === null ? 'any' : voice.value.say(`start.${onlyStart}`),
  });
}
