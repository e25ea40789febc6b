import { xOfDay } from '../drawing/day-axis.ts';
import { ink } from '../drawing/ink.ts';
import { px } from '../drawing/path.ts';
import type { YearLayout } from './year-layout.ts';
import { YearLine } from './year-line.tsx';
import type { CommonScale, CropLine, YearLineProps } from './year-line-props.ts';

/** A year line as one of several under each other. */
export function LowYearLine(props: YearLineProps & { common: CommonScale }) {
  const { crop } = props;
  return <YearLine {...props} onGround={(layout) => crop && <MarkDots layout={layout} crop={crop} />} />;
}

/** The marks of a crop without their words, on the ground: each day, and where it falls in 8 years of 10. */
function MarkDots({ layout, crop }: { layout: YearLayout; crop: CropLine }) {
  const { axis, ground } = layout;
  return (
    <>
      {crop.marks.map(({ kind, span }) =>
        span ? (
          <path
            key={kind}
            d={`M${px(xOfDay(axis, span.from))} ${px(ground)}H${px(xOfDay(axis, span.to + 1))}`}
            stroke={ink.skin2}
            stroke-width={6}
            stroke-linecap="round"
          />
        ) : null,
      )}
      {crop.marks.map(({ kind, day }) => (
        <circle
          key={kind}
          cx={px(xOfDay(axis, day))}
          cy={px(ground)}
          r={3.2}
          fill={ink.paper}
          stroke={ink.ink}
          stroke-width={1.6}
        />
      ))}
    </>
  );
}
