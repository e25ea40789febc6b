/** The command on watering explaining itself. */
export const wateringHelp = {
  'help.watering':
    'Whether a crop asks for water today, how much and until when, and what a season takes in an ordinary and in a dry year.',
  'help.watering.bed-m2': 'size of the bed, in m² (default: that of the planting or its bed, where known)',
  'help.watering.watering': 'how water comes to the bed (default: as the bed has it, else can)',
  'help.watering.flow': 'what the hose or the line gives in all, in l/h',
  'help.watering.efficiency':
    'share of the water let out that reaches the roots, {min} to {max} (default: {above} from can or hose, {drip} by drip)',
  'help.watering.salt': 'salt of the water, as electrical conductivity in dS/m, {min} to {max}',
} as const;
