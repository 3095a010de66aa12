### La ventana: la lista de casos, y lo que decide una persona.

## La lista.

queue-title = archproof: casos en { $folder }
queue-heading = Casos en { $folder }
queue-keys = Arriba, Abajo, Re Pág, Av Pág: elegir · Intro: abrir · Esc: borrar la búsqueda · F2, F3, F4: hoja, nota de devolución, informe · F5: leer de nuevo · F6, F7, F8: decidir
queue-caution = Una ayuda para la inspección, no un producto sanitario; decide el profesional clínico autorizado. Las decisiones y las notas permanecen en este equipo: escriba seudónimos e iniciales, nunca nombres.
queue-search = buscar: caso, prueba, zona, nota
queue-open = Abrir
queue-read-again = Leer de nuevo
queue-another-folder = Otra carpeta …
queue-desk = Mesa
queue-all = Todos { $count }
queue-chip = { $state } { $count }
queue-head-state = Estado
queue-head-case = Caso
queue-head-about = Resultado de la comprobación
queue-head-decision = Decisión
queue-empty = Todavía no hay casos. Los que lleguen a la carpeta aparecen aquí por sí solos.
queue-no-match = Ningún caso coincide. Esc borra la búsqueda; «Todos» muestra todos los estados.
queue-is-read-again = Leído de nuevo.
queue-scans-alone = Escaneos sin archivo de caso: Intro los pone en la mesa.
queue-not-checked = Aún sin comprobar: Intro lo comprueba.
queue-about = { $verdict }: { $cause } { $what }
queue-about-more = { $verdict }: { $cause } { $what }, y { $more } más
queue-folder-unreadable = { $path }: no se puede examinar ({ $reason })
queue-first-or-last = Este es el { $which ->
    [first] primer
   *[last] último
} caso de la lista. Esc vuelve a ella.

## Lo que un caso pide de una persona.

state-to-look-at = Por examinar
state-to-return = Por devolver
state-waiting = Pendiente de comprobación
state-to-work-from = Listo para trabajar
state-on-hold = En espera
state-decided = Decidido
state-being-read = Leyéndose

## Teclas.

key-enter = Intro
key-page-up = Re Pág
key-page-down = Av Pág
key-open-scans = Ctrl O
key-open-folder = Ctrl Mayús O
key-desk = Ctrl D

## Los documentos de un resultado.

paper-sheet = Hoja
paper-return-note = Nota de devolución
paper-report = Informe
paper-no-return-note = Este resultado no tiene nota de devolución: no se pide nada a la clínica, o se comprobó sin --return.
paper-missing = Este resultado no tiene esa página: se comprobó con --no-report.
paper-no-program = { $path }: el sistema no abre ningún programa para él ({ $reason }); ábralo a mano
paper-opened = { $paper }: lo abre el sistema.
paper-no-result = Este caso aún no tiene resultado. Intro lo comprueba.

## La decisión.

answer-returned = Devuelto
answer-worked-from = En trabajo
answer-waiting-for = A la espera de
answer-button = { $answer } …
outcome-returned = devuelto
outcome-worked-from = en trabajo
outcome-waiting-for = a la espera de: { $what }
decision = { $outcome }, { $initials }, { $time }
decision-with-note = { $decision }: { $note }
decision-is = Decidido: { $decision }
decision-made = Decidido: { $decision }.
decision-none = Aún sin decisión. F6 devuelto, F7 en trabajo, F8 a la espera de.
decision-of-other-scans = Una decisión anterior se tomó para otros escaneos.
decision-without-result = Un caso se decide cuando tiene resultado. Intro lo comprueba.
decision-meanwhile = Entretanto se decidió: { $decision }. Vuelva a examinar el caso y decida después.
decision-refused = { $path }: { $why }; corríjalo o quítelo
decision-unreadable = no se puede leer ({ $reason })
decision-is-none = no es una decisión ({ $reason })
decision-time = no es una decisión (la hora necesita su fecha y su diferencia con UTC)
initials-missing = Indique sus iniciales, por ejemplo AB.
initials-only = Indique iniciales de { $most } mayúsculas como máximo, por ejemplo AB: no se guardan nombres, solo seudónimos.
draft-waiting-for-what = Diga a qué espera el caso.
draft-no-clock = El reloj de este equipo no da una hora utilizable; ajústelo y guarde después.
decide-previous = Anterior
decide-next = Siguiente
decide-list = Lista
decide-turn = { $number } de { $of }
decide-title = Decisión sobre el caso { $case }
decide-save = Guardar (Intro)
decide-saved-as = Se guarda junto a los resultados como decision.toml, con la hora y las sumas de comprobación de los escaneos. Los resultados no cambian.
decide-such-as = por ejemplo, la impresión inferior
decide-note = Nota
decide-note-hint = solo seudónimos, sin nombres; puede quedar vacía
decide-initials = Iniciales
decide-initials-hint = 4 letras como máximo, por ejemplo AB
