export const journal = {
  title: 'Diario',
  says: 'Todo lo dicho, lo último primero. Lo que está mal se tacha, por antiguo que sea: se sigue viendo y ya no cuenta. También una tachadura se puede tachar.',
  findHint: 'Lote, persona o palabras',
  none: 'Nada de lo dicho tiene estas palabras.',
  looking: 'Buscando antes del {{day}} …',
  lookedBack: 'Buscado hasta el {{day}}.',
  further: 'Buscar más atrás',
  batch: 'lote {{name}}',
  order: 'pedido {{name}}',
}
