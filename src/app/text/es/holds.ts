export const holds = {
  title: 'Retenciones',
  stands: 'Retenido desde el {{day}}{{by}}: {{why}}',
  by: ' por {{person}}',
  of: {
    mother: 'Planta madre {{name}}',
    batch: 'Lote {{name}}',
    bench: 'Mesa {{name}}',
    lineage: '{{name}} y todo lo que salió de ahí',
  },
  wasReleased: 'Liberado el {{day}}{{by}}: {{why}}',
  release: 'Liberar',
  releaseTitle: 'Liberar la retención de {{name}}',
  releaseWhy: 'Por qué puede seguir',
  released: 'La retención de {{name}} está liberada.',
  none: 'No hay nada retenido.',
  history: 'Retenciones liberadas',
  need: 'Escriba por qué.',
}
