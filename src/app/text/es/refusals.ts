/** Why the server said no, by its English words. */
export const refusals: Readonly<Record<string, string>> = {
  'The request does not fit': 'La petición no encaja',
  'Correct it as /api/openapi.json describes and send it again.':
    'Corríjala como describe /api/openapi.json y envíela de nuevo.',
  'Only pages of this computer may ask': 'Solo pueden preguntar páginas de este ordenador',
  'Host or Origin header': 'cabecera Host u Origin',
  'Open the app by the address that was printed at the start.':
    'Abra la aplicación por la dirección que se mostró al empezar.',
  'Nothing is here': 'Aquí no hay nada',
  'See /api/openapi.json for what there is.': 'Vea en /api/openapi.json lo que hay.',
  'The log could not be written or read': 'No se pudo escribir o leer el registro',
  'log on the disk of this computer': 'registro en el disco de este ordenador',
  'The server failed': 'El servidor falló',
  'Try again; if it stays, keep this message:': 'Inténtelo de nuevo; si sigue igual, guarde este mensaje:',
  'The server answered {status}': 'El servidor respondió {status}',
  'Try again, or look at the server’s messages.': 'Inténtelo de nuevo, o mire los mensajes del servidor.',
  'The nursery is as it was: the backup was not put back':
    'El vivero está como estaba: la copia no se restauró',
  backup: 'copia de seguridad',
  'The file': 'el archivo',
  'No such nursery is kept': 'No se guarda tal vivero',
  'See /api/kept for those that are, or choose a backup file.':
    'Vea en /api/kept los que hay, o elija un archivo de copia.',
  'This is not the invented nursery': 'Este no es el vivero inventado',
  nursery: 'vivero',
  'It is your own already, and is left as it is. An empty one is begun in another folder: --data FOLDER --empty.':
    'Ya es el suyo, y se deja como está. Uno vacío se empieza en otra carpeta: --data CARPETA --empty.',
  'The nursery has batches or orders already': 'El vivero ya tiene lotes o pedidos',
  'The invented one is opened in an empty nursery, or in another folder: --data FOLDER.':
    'El inventado se abre en un vivero vacío, o en otra carpeta: --data CARPETA.',
  'Nothing is known to have been brought in so': 'No consta que se trajera así nada',
  'See /api/exchange/brought for what was, or strike the entries one by one.':
    'Vea en /api/exchange/brought lo que se trajo, o tache las anotaciones una a una.',
  'No such batch': 'No hay tal lote',
  'batch {id}': 'lote {id}',
  'Look for it by name in the list of batches.': 'Búsquelo por su nombre en la lista de lotes.',
  'No such mother tree': 'No hay tal planta madre',
  'mother tree {id}': 'planta madre {id}',
  'No such bench': 'No hay tal mesa',
  'bench {id}': 'mesa {id}',
  'Look for it by name in the list.': 'Búsquelo por su nombre en la lista.',
  'No such protocol': 'No hay tal protocolo',
  'protocol {id}': 'protocolo {id}',
  'Look for it in the settings.': 'Búsquelo en los ajustes.',
  'No such kind': 'No hay tal clase',
  'kind {id}': 'clase {id}',
  'Choose one of the nursery’s kinds.': 'Elija una de las clases del vivero.',
  'No such order': 'No hay tal pedido',
  'order {id}': 'pedido {id}',
  'Place it first.': 'Haga primero el pedido.',
  'No such start is planned': 'No está previsto tal inicio',
  'start {id}': 'inicio {id}',
  'Look at the plan again.': 'Vuelva a mirar el plan.',
  'No plan is made yet': 'Aún no hay plan',
  'season plan': 'plan de la temporada',
  'Plan the season first.': 'Planifique antes la temporada.',
  'A plan is being made already': 'Ya se está haciendo un plan',
  'planning job': 'tarea de planificar',
  'Wait for it, or stop it first.': 'Espere a que acabe, o deténgala antes.',
  'A plan is being made': 'Se está haciendo un plan',
  'Ask again when it is ready, or stop it first.': 'Pregunte otra vez cuando esté listo, o deténgalo antes.',
  'No plan is being made': 'No se está haciendo ningún plan',
  'Begin one first.': 'Empiece uno antes.',
  'This plan is no longer the latest': 'Este plan ya no es el último',
  'plan {id}': 'plan {id}',
  'Look at the new plan and accept that.': 'Mire el plan nuevo y acepte ese.',
  'The question was given up': 'La pregunta se abandonó',
  'what-if': 'pregunta de prueba',
  'A later one was asked instead.': 'En su lugar se hizo otra más tarde.',
  'There is no answer': 'No hay respuesta',
  'Ask again; the reason:': 'Pregunte otra vez; el motivo:',
  'The picture is too large': 'La foto es demasiado grande',
  picture: 'foto',
  'Send one of at most 5 MB.': 'Envíe una de 5 MB como mucho.',
  'This is no photograph': 'Esto no es una foto',
  'Send a JPEG.': 'Envíe un JPEG.',
  'The picture did not arrive whole': 'La foto no llegó entera',
  'Send it again, named by the SHA-256 of its bytes.':
    'Envíela de nuevo, con el SHA-256 de sus bytes por nombre.',
  'This picture is not here': 'Esta foto no está aquí',
  'It may still wait on the device that took it.': 'Quizá espere aún en el aparato que la tomó.',
  'The entry is not as it should be': 'La anotación no es como debe ser',
  'Correct this field and send it again; nothing of this entry was kept.':
    'Corrija este campo y envíela de nuevo; de esta anotación no se guardó nada.',
  'Another entry has this id already and says something else':
    'Otra anotación ya tiene este identificador y dice otra cosa',
  id: 'identificador',
  'Keep the first one, strike it if it is wrong, and say the new one under an id of its own.':
    'Conserve la primera, táchela si está mal, y anote la nueva con un identificador propio.',
  'These files are no longer kept': 'Estos archivos ya no se guardan',
  'reading {id}': 'lectura {id}',
  'Choose them once more and read them again.': 'Elíjalos otra vez y léalos de nuevo.',
  'The files are too large': 'Los archivos son demasiado grandes',
  files: 'archivos',
  'Send at most 50 MB at a time.': 'Envíe 50 MB como mucho cada vez.',
  'No file was sent': 'No se envió ningún archivo',
  'Choose a spreadsheet: CSV or .xlsx.': 'Elija una hoja de cálculo: CSV o .xlsx.',
  'What is said of the sheets cannot be read': 'No se puede leer lo que se dice de las hojas',
  mapping: 'correspondencia',
  'Send it as /api/openapi.json describes.': 'Envíela como describe /api/openapi.json.',
  'There is nothing to write': 'No hay nada que escribir',
  'The record has all of it already, or no row can be used.':
    'El registro ya lo tiene todo, o no sirve ninguna fila.',
  'A question is open': 'Queda una pregunta abierta',
  'Answer it, then write:': 'Respóndala y escriba después:',
  'There is no such sheet': 'No hay tal hoja',
  'See /api/exchange/sheets for those there are.': 'Vea en /api/exchange/sheets las que hay.',
  'There is no such table': 'No hay tal tabla',
  'See datapackage.json for those there are.': 'Vea en datapackage.json las que hay.',
  // Backups on their way
  'Writing the backup.': 'Escribiendo la copia.',
  'Reading the backup once more.': 'Leyendo otra vez la copia.',
  'Reading the backup.': 'Leyendo la copia.',
  'Keeping what is here.': 'Guardando lo que hay aquí.',
  'Putting it in its place.': 'Poniéndola en su sitio.',
  'Opening an empty nursery.': 'Abriendo un vivero vacío.',
  // What the disk keeps from being done
  'Another program is writing to {path} just now. Try again in a moment.':
    'Otro programa está escribiendo en {path} en este momento. Inténtelo enseguida otra vez.',
  '{path} cannot be written to. Give yourself the right to write there, or choose another folder.':
    'No se puede escribir en {path}. Dese permiso para escribir ahí, o elija otra carpeta.',
  'The disk did not read or write {path} as it should. Check the disk, then restore the last good backup.':
    'El disco no leyó o no escribió {path} como debía. Revise el disco y restaure la última copia buena.',
  '{path} is damaged. Restore the last good backup into an empty folder.':
    '{Path} está dañado. Restaure la última copia buena en una carpeta vacía.',
  'The disk is full: nothing was written to {path}. Make room, then enter it again.':
    'El disco está lleno: no se escribió nada en {path}. Haga sitio y anótelo de nuevo.',
  '{path} cannot be opened. See that the folder is there and that you may write in it.':
    'No se puede abrir {path}. Compruebe que la carpeta existe y que puede escribir en ella.',
  '{path} is not a nursery’s log. Choose another folder, or restore a backup.':
    '{Path} no es el registro de un vivero. Elija otra carpeta, o restaure una copia.',
  '{path} is not a folder. Choose a folder for the nursery.':
    '{Path} no es una carpeta. Elija una carpeta para el vivero.',
  '{path} is there already. Choose another name for the backup.':
    '{Path} ya existe. Elija otro nombre para la copia.',
  'There is no file {path}. Name the backup to restore.':
    'No existe el archivo {path}. Diga qué copia se ha de restaurar.',
  '{path} holds a nursery already. Restore into an empty folder.':
    '{Path} ya contiene un vivero. Restaure en una carpeta vacía.',
  '{path} is not a nursery’s backup. Name another file.':
    '{Path} no es la copia de un vivero. Elija otro archivo.',
  '{path} is damaged: entry {seq}, {why}. Use another backup.':
    '{Path} está dañado: anotación {seq}, {why}. Use otra copia.',
  '{path} belongs to another program. Choose another folder.':
    '{Path} es de otro programa. Elija otra carpeta.',
  '{path} was written by a newer Budstick (its form is {form}, this one knows {known}). Update Budstick, then open it again.':
    '{Path} lo escribió un Budstick más nuevo (su forma es la {form}, este conoce la {known}). Actualice Budstick y ábralo de nuevo.',
  'Another Budstick is writing to the nursery in {path}. Close it first, or enter this through it.':
    'Otro Budstick está escribiendo en el vivero de {path}. Ciérrelo antes, o anote esto en él.',
}
