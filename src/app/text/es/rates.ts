export const rates = {
  title: 'Prendimiento',
  says: {
    steps:
      'Lo que sale adelante, fase por fase: el punto es la tasa que usa el plan, la línea abarca nueve de los diez lotes siguientes. Pulse uno para probar otra.',
    kinds: 'Qué clase va cómo en cada fase, descontados meses, personas y años.',
    rootstocks:
      'Qué prende sobre qué patrón en cada método, descontados clases, meses, personas y años. Donde una fruta va sobre un solo patrón, no se pueden separar la una del otro.',
    methods:
      'Qué prende con cada método en cada fruta: el primer recuento de raíces, uniones o brotes, descontados clases, meses, personas y años.',
    cultivars:
      'Qué cultivar da qué resultado en cada método de su fruta, descontados pasos, meses, personas y años. Donde un cultivar va sobre un solo patrón, no se pueden separar el uno del otro.',
    months: 'Qué hace el mes del inicio, descontadas clases, personas y años.',
    people:
      'Quién trabaja cada método y con qué resultado, como si todos hubieran tenido las mismas clases en los mismos años. Los pocos recuentos se acercan a los demás.',
    slumps:
      'Lo que en el último medio año va peor de lo que todo lo anterior dejaba esperar: el punto es lo que salió de un lote, la línea abarca nueve de diez lotes así. Pulse uno para abrirlo.',
  },
  findHint: 'Clase, protocolo o fase',
  show: { label: 'Qué tasas', own: 'Con registros suyos', set: 'Fijadas por usted', all: 'Todas' },
  empty: 'Ninguna tasa coincide.',
  view: {
    label: 'Qué ver',
    steps: 'Fases',
    kinds: 'Clases',
    rootstocks: 'Patrones',
    methods: 'Métodos',
    cultivars: 'Cultivares',
    months: 'Meses',
    people: 'Personas',
    slumps: 'Bajones',
  },
  compared: {
    funnel: '{{of}}: quién destaca',
    funnelOf: '{{of}}: qué destaca',
    none: 'Hay muy pocos recuentos para comparar.',
    who: 'De',
    batches_one: '{{shown}} lote: {{survived}} de {{entered}}',
    batches_other: '{{shown}} lotes: {{survived}} de {{entered}}',
    finding: {
      'hardly-chance': '{{first}} va mejor que {{last}}: difícilmente es azar.',
      'probably-different':
        '{{first}} va probablemente mejor que {{last}} (con una probabilidad de {{chance}}); una pequeña parte de tales diferencias es azar.',
      'no-difference-shown':
        'No se ve diferencia entre {{first}} y {{last}}; una que importe se habría visto casi seguro.',
      'cannot-tell-yet':
        'Aún no se puede decir entre {{first}} y {{last}}: puede ser azar. Unas {{more}} plantas más lo dirían.',
    },
  },
  slumps: {
    none: 'Nada va peor que antes.',
    named_one: 'Va peor que antes: {{first}}',
    named_other: '{{shown}} van peor que antes; el primero, {{first}}',
    says_one:
      'Desde el {{since}}, {{shown}} lote: {{survived}} de {{entered}}, donde se esperaba un {{expected}}; razón de probabilidades {{odds}} veces la de antes. Algo va mal con una probabilidad de {{chance}}.',
    says_other:
      'Desde el {{since}}, {{shown}} lotes: {{survived}} de {{entered}}, donde se esperaba un {{expected}}; razón de probabilidades {{odds}} veces la de antes. Algo va mal con una probabilidad de {{chance}}.',
    batch: '{{survived}} de {{entered}}, se esperaba {{expected}}',
    worst: 'Se muestran los lotes que más perdieron.',
    column: { batch: 'Lote', expected: 'Esperado' },
  },
  group: '{{protocol}}',
  batches_one: 'suyo, {{shown}} lote: {{survived}} de {{entered}}',
  batches_other: 'suyo, {{shown}} lotes: {{survived}} de {{entered}}',
  assumed: 'supuesto: {{basis}}',
  set: 'fijado por usted: {{basis}}',
  overrule: 'Que valga esta',
  takeBack: 'Retirar lo fijado',
  takenBack: '{{step}} de {{kind}}: lo fijado queda tachado.',
  overruleTitle: '¿Y si prendiera otra parte?',
  overruleSays:
    '{{kind}}, {{step}}. Pruebe otra tasa; con un motivo vale frente a datos y registros hasta que usted la tache.',
  tried: '¿Y si prendieran tantas?',
  triedSays: '{{tried}} (ahora {{now}})',
  why: 'Por qué',
  kept: 'Tasa fijada: {{step}} de {{kind}}.',
  column: {
    kind: 'Clase',
    step: 'Fase',
    rate: 'Tasa',
    low: 'Bajo',
    high: 'Alto',
    source: 'Fuente',
    entered: 'Entraron',
    survived: 'Sobrevivieron',
  },
  more: 'Mostrar {{shown}} clases más',
  anyKind: 'cualquier clase',
}
