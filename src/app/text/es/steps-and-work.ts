export const steps = {
  'Sown, until germinated': 'Sembrada, hasta germinar',
  'Pricked out, first thirty days': 'Repicada, primeros treinta días',
  'Potted on and grown to size': 'En maceta mayor, hasta su tamaño',
  'Hardened in full sun, graded and held for dispatch':
    'Endurecida a pleno sol, clasificada y lista para enviar',
  'Grown to a stem that can be worked': 'Criada hasta tener tallo para injertar',
  'Stuck, until rooted': 'Clavada, hasta enraizar',
  'Weaned to open air and potted': 'Aclimatada al aire y enmacetada',
  'Cut dried and callused': 'Corte seco y con callo',
  'Ringed and packed, on the mother': 'Anillada y envuelta, en la planta madre',
  'Severed, potted, settling under shade': 'Separada, enmacetada, asentándose a la sombra',
  'Mounded, in the stool bed': 'Aporcada, en el campo de cepas',
  'Pegged down, on the mother': 'Sujeta al suelo, en la planta madre',
  'Graft, tie and cover, until united': 'Injertar, atar y cubrir, hasta soldar',
  'Out of cover, first flush hardened': 'Sin cubierta, primera brotación endurecida',
  'Stock sown, until it can be worked': 'Patrón sembrado, hasta poder injertarlo',
  'Graft at the side and tie, until united': 'Injertar de lado y atar, hasta soldar',
  'Graft, tie, wax, warm at the union, until united':
    'Injertar, atar, encerar, calor en la unión, hasta soldar',
  'Worked and stuck, until united and rooted': 'Injertada y clavada, hasta soldar y enraizar',
  'Rootstock worked on the nurse seedling': 'Patrón injertado en la planta nodriza',
  'Shoot drawn up in the dark, nicked, dressed and rooted':
    'Brote alargado a oscuras, herido, tratado y enraizado',
  'Scion worked on the rooted rootstock, until united': 'Púa injertada en el patrón enraizado, hasta soldar',
  'Cut over, worked and sealed, until a scion grows':
    'Descabezada, injertada y sellada, hasta que crece una púa',
  'Best scion tied in, others stopped': 'La mejor púa atada, las otras frenadas',
  'New head grown': 'Copa nueva formada',
  'Join stock and branch, tie, until united': 'Unir patrón y rama, atar, hasta soldar',
  'Bud and tie, until united': 'Injertar la yema y atar, hasta soldar',
  'Headed back, until the bud has grown and hardened': 'Descabezado, hasta que la yema crece y endurece',
  'Dug, trimmed and potted, until growing': 'Arrancada, recortada y enmacetada, hasta que crece',
  'Corm pared and bedded; plantlets detached and weaned':
    'Cormo pelado y en cama; plantitas separadas y aclimatadas',
  'Out of the flask, weaned to open air': 'Fuera del frasco, aclimatada al aire',
  'Lifted at rest, graded and kept cold with roots moist':
    'Arrancada en reposo, clasificada y en frío con raíces húmedas',
  'Graft, tie, wax and box, until united': 'Injertar, atar, encerar y encajonar, hasta soldar',
  'Planted in the row, until shoots have hardened': 'Plantada en línea, hasta que endurecen los brotes',
  'Grown on in the row': 'Criada en la línea',
  'Bud asleep until headed back in spring': 'Yema dormida hasta descabezar en primavera',
  'Graft, wax and box, until united': 'Injertar, encerar y encajonar, hasta soldar',
  'Planted out, until rooted and growing': 'Plantada fuera, hasta enraizar y crecer',
  // The rungs of a count-back below the last step.
  Wanted: 'Deseadas',
  Finished: 'Terminadas',
}

export const tasks = {
  Sow: 'Sembrar',
  'Prick out': 'Repicar',
  'Pot on': 'Cambiar de maceta',
  'Stake and tie': 'Entutorar y atar',
  'Water, weed, look over': 'Regar, desherbar, repasar',
  'Grade, label, move out': 'Clasificar, etiquetar, sacar',
  Pot: 'Enmacetar',
  'Collect, strip, dip and stick': 'Recoger, deshojar, mojar en hormona y clavar',
  'Cut and lay out': 'Cortar y tender',
  Stick: 'Clavar',
  'Dig roots, cut, lay': 'Sacar raíces, cortar, tender',
  'Ring, dress, pack and tie': 'Anillar, tratar, envolver y atar',
  'Cut off, trim, pot': 'Cortar, recortar, enmacetar',
  'Mound the shoots': 'Aporcar los brotes',
  'Lift and grade': 'Arrancar y clasificar',
  'Peg down and cover': 'Sujetar al suelo y cubrir',
  'Sever, lift, pot': 'Separar, arrancar, enmacetar',
  'Graft, tie and cover': 'Injertar, atar y cubrir',
  'Open, check take, rub off stock shoots': 'Abrir, ver el prendimiento, quitar brotes del patrón',
  'Move out and space': 'Sacar y espaciar',
  'Graft at the side and tie': 'Injertar de lado y atar',
  'Head back the stock in two cuts': 'Descabezar el patrón en dos cortes',
  'Graft, tie, wax, warm at the union': 'Injertar, atar, encerar, calor en la unión',
  'Graft on the cutting, tie, dip and stick': 'Injertar en la estaquilla, atar, mojar en hormona y clavar',
  'Check take and roots': 'Ver prendimiento y raíces',
  'Nick, dress, set the rooting sleeve': 'Herir, tratar, poner la manga de enraizar',
  'Cut over, graft, tie and seal': 'Descabezar, injertar, atar y sellar',
  'Check, rub off stock shoots': 'Repasar, quitar brotes del patrón',
  'Tie in, shade the bark, stop rivals': 'Atar, sombrear la corteza, frenar rivales',
  'Thin and tie the new head': 'Aclarar y atar la copa nueva',
  'Join stock and branch, tie': 'Unir patrón y rama, atar',
  'Sever in steps': 'Separar por pasos',
  'Bud and tie': 'Injertar la yema y atar',
  'Head back the stock, rub off its shoots': 'Descabezar el patrón, quitar sus brotes',
  'Dig, trim, pot': 'Arrancar, recortar, enmacetar',
  'Detach and pot plantlets': 'Separar y enmacetar plantitas',
  'Wash, grade, plant': 'Lavar, clasificar, plantar',
  'Graft, tie, wax and box': 'Injertar, atar, encerar y encajonar',
  'Plant out': 'Plantar fuera',
  'Stake, tie, rub off side shoots': 'Entutorar, atar, quitar brotes laterales',
  'Lift, grade, bundle': 'Arrancar, clasificar, hacer manojos',
  'Graft, wax and box': 'Injertar, encerar y encajonar',
  'Strip the leaves from the scion shoots, # days before cutting':
    'Deshojar los brotes para púas, # días antes de cortarlos',
  'Girdle the scion branches, # weeks before cutting':
    'Anillar las ramas para púas, # semanas antes de cortarlas',
  'Chill the seed, moist, at # to # °C, for # days (# to #)':
    'Enfriar la semilla, húmeda, de # a # °C, durante # días (# a #)',
}

export const cautions = {
  'Sharp blade: cut away from the body, thumb guard on, knife closed when not cutting.':
    'Hoja afilada: corte hacia fuera del cuerpo, con dedil, y la navaja cerrada si no corta.',
  'Dip or wipe the blade between mother trees. Disinfectants burn and give off fumes: follow the label, local rules and licensed practice.':
    'Moje o limpie la hoja entre plantas madre. Los desinfectantes queman y desprenden vapores: siga la etiqueta, las normas locales y el ejercicio autorizado.',
  'Rooting hormone: gloves, no dust or mist to breathe; follow the label, local rules and licensed practice.':
    'Hormona de enraizar: guantes, sin respirar polvo ni niebla; siga la etiqueta, las normas locales y el ejercicio autorizado.',
  'Mist, bottom heat and electricity: only circuits with a residual-current breaker, fitted by an electrician; switch off before reaching in.':
    'Nebulización, calor de fondo y electricidad: solo circuitos con interruptor diferencial, puestos por un electricista; apague antes de meter la mano.',
  'Lift with the knees, two people or a trolley for big pots.':
    'Levante con las rodillas; dos personas o un carro para macetas grandes.',
  'Ladder on firm ground with someone near; no cutting at arm’s length.':
    'Escalera en suelo firme y con alguien cerca; no corte con el brazo estirado.',
  'Closed houses and tents heat up fast: drink, rest in the shade, never alone in the heat of the day.':
    'Invernaderos y túneles cerrados se calientan pronto: beba, descanse a la sombra, nunca solo en las horas de calor.',
  'Sap may irritate skin and eyes, more so in sun: gloves, sleeves, wash at once.':
    'La savia puede irritar piel y ojos, más al sol: guantes, mangas, lávese enseguida.',
  'Kernels of apricot, peach, plum, cherry and loquat, and seed of annona and white sapote, are poisonous: never taste, keep from children and animals, no dust.':
    'Los huesos de albaricoque, melocotón, ciruela, cereza y níspero, y las semillas de anona y zapote blanco, son venenosos: no los pruebe, lejos de niños y animales, sin polvo.',
  'Hot wax burns and can catch fire: water bath, lid at hand, never left alone, dip with the arm clear.':
    'La cera caliente quema y puede arder: al baño María, con tapa a mano, nunca sola, y sumerja con el brazo apartado.',
  'A sawn limb falls: cut from below first, nobody underneath, eyes covered.':
    'Una rama serrada cae: corte primero por debajo, nadie debajo, ojos protegidos.',
  'Spines and thorns: thick gloves, eyes covered.': 'Espinas y pinchos: guantes gruesos, ojos protegidos.',
  'Wet the medium before handling: no dust to breathe; wash hands, cover cuts.':
    'Moje el sustrato antes de manejarlo: sin polvo que respirar; lávese las manos, cubra los cortes.',
  'Hot-water treatment scalds: lift baskets with a hook, let them drip before reaching in.':
    'El tratamiento con agua caliente escalda: saque los cestos con un gancho y deje escurrir antes de tocarlos.',
}
