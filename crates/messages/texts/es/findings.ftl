### Qué hacer ante un hallazgo. El borde está en `border`, la cubeta en `tray`.

held-back = En espera hasta que se responda la pregunta sobre esta impresión: los lados y los lugares no son seguros. No haga nada todavía.
before-the-wash = Hallado antes del lavado; el lavado posterior se evalúa por separado. Se pedía:

## Preguntas.

file-unclear = El escaneo de la { $which ->
    [tray] cubeta
   *[impression] impresión
} puede significar dos cosas: { $question }. Expórtelo de nuevo y compruébelo.
file-is-tray-too = El escaneo de la impresión y el de la cubeta son el mismo archivo. Indique como escaneo de la cubeta el de la cubeta vacía.
file-mirrored = Las impresiones de este maxilar antes y después del lavado solo encajan entre sí como en un espejo: uno de los escaneos está reflejado, o son de dos bocas. Exporte ambos de nuevo sin reflejarlos y compare derecha e izquierda con las impresiones.
file-given-twice = Se indica el mismo archivo de escaneo para dos impresiones de este caso. Indique para cada impresión su propio escaneo.
unit-inferred = El tamaño del escaneo de la { $which ->
    [tray] cubeta
   *[impression] impresión
} no corresponde a una impresión en mm, sino a una en { $unit }, y así se leyó. Si es correcto, compruebe de nuevo con --unit { $unit }; si no, expórtelo en mm.
unit-ambiguous = El tamaño del escaneo de la { $which ->
    [tray] cubeta
   *[impression] impresión
} no corresponde a una impresión en mm, pero podría estar en { $units }. Compruebe de nuevo con --unit y la unidad correcta, o expórtelo en mm.
not-an-impression = No es una impresión: { $what }.
check-file-and-unit = Compruebe que se haya indicado el archivo correcto, y su unidad (--unit).
give-impression-itself = Indique el escaneo de la propia impresión, no de un modelo, una prótesis o la boca.
for-edentulous-arches = Esta comprobación es para arcadas edéntulas; examine esta a simple vista.
give-whole-arch = Indique el escaneo de toda la arcada; si solo se escaneó una mitad, escanee el resto.
give-impression-in-tray = Indique el escaneo de la impresión en su cubeta; la cubeta vacía se indica con --tray. Si es una impresión sin su cubeta, examínela a simple vista.
give-every-part = Indique cada parte de esta impresión, escaneada por todos los lados, y el escaneo de su cubeta entera.
export-each-scan = Exporte cada escaneo a un archivo propio.
give-edentulous = Indique el escaneo de la impresión de una arcada edéntula en su cubeta.
arch-mismatch = ¿Qué maxilar es? Se indicó el { $declared ->
    [maxillary] superior
   *[mandibular] inferior
}, pero el escaneo tiene la forma de una impresión { $found ->
    [maxillary] superior
   *[mandibular] inferior
} (confianza { $confidence }). Indique el escaneo correcto o el maxilar correcto.
which-jaw = ¿Qué maxilar es? Indíquelo con --arch upper (superior) o --arch lower (inferior). La forma sola no es concluyente, y de ello dependen derecha e izquierda.
which-way = ¿Cómo está orientada la impresión? Sus ejes no son seguros, y de ellos dependen derecha e izquierda. Escanee de nuevo toda la arcada.

## El escaneo.

scan-coarse = La resolución del escaneo es demasiado baja. Expórtelo con la resolución completa y compruebe de nuevo.
tissue-area = Se escaneó menos superficie tisular de la que tiene una impresión de este maxilar (área escaneada, incluidas las aletas). Si la impresión está completa, escanéela entera.
void-unseen = La resolución del escaneo es demasiado baja para mostrar burbujas por las que la impresión no sería válida. Escanee de nuevo con mayor resolución, o examine a simple vista con una luz el reborde, las escotaduras, las almohadillas y el borde.
scan-quality-coarse = La resolución del escaneo es demasiado baja para mostrar burbujas pequeñas en { $regions }. Para buscarlas, escanee de nuevo con mayor resolución en una sola pasada.
scan-quality-rough = El escaneo es demasiado rugoso para mostrar defectos poco profundos en { $regions }. Para buscarlos, escanee de nuevo con menos ruido en una sola pasada.
scan-quality-doubled = El escaneo está mal unido, con dos capas, en { $regions }. Escanee de nuevo en una sola pasada.
every-region = todas las zonas
these-regions = estas zonas: { $regions }

## La superficie tisular.

too-close-to-tell = Demasiado cerca del límite para decidirlo: mírelo.
void-dry = Aquí quedó aire atrapado. Seque el lugar para que el lavado lo rellene.
void-at-seal = Aquí quedó aire atrapado, donde la prótesis debe sellar. El modelo tendrá aquí una perla de yeso: recórtela si la superficie a su alrededor muestra la forma verdadera. Si no, seque el lugar, rellene la burbuja con material de lavado y asiente de nuevo la impresión.
void = Aquí quedó aire atrapado. El modelo tendrá aquí una perla de yeso que hay que recortar. Si la perla es demasiado grande para ver la superficie verdadera a su alrededor, repita el lavado.
void-or-pressed = Mire primero si aquí presionó la cubeta: en el fondo de esta depresión el material sobre ella solo tiene { $cover } de grosor. Si no fue así, trate la depresión como una burbuja.
void-or-landmark = Mire primero si esta depresión es { $landmark }. Si no lo es, trátela como una burbuja.
nodule = Aquí hay un nódulo que no parece tejido. Examínelo y compárelo con la boca; si no es anatomía, elimínelo antes del vaciado.
nodule-or-band = Mire primero si este es el material entre dos bandas de un frenillo. Si lo es, déjelo; si no lo es, trátelo como un nódulo.
fold = Este surco parece el encuentro de dos frentes de material que no se unieron. Examínelo. Si el material se plegó o se arrastró, tome un lavado encima; si la mucosa tiene este surco, déjelo.
hole = Aquí no se escaneó nada: escanee de nuevo este punto. Si la propia impresión tiene un agujero, el lavado debe rellenarlo.
hole-small = Aquí quedó sin escanear un punto pequeño. En él no cabe una burbuja por la que la impresión no sería válida. Mire ese punto en la propia impresión.

## Puntos anatómicos, nombrados como en `the-landmark`: con artículo, nunca tras «a» o «de».

cut-short-scan-ends = El escaneo termina en { $landmark }: escanee de nuevo este punto y bastante más allá. No se evaluó si la propia impresión llega hasta ahí.
cut-short-missed = La impresión no alcanza { $landmark }: repita la impresión en una cubeta más larga o con el borde aumentado.
cut-short-trough-open = Puede que la impresión no alcance { $landmark }, que debería cerrar ahí el surco: vea si lo que está cortado es el escaneo o la impresión. Si es la impresión, repítala en una cubeta más larga o con el borde aumentado.
cut-short-at-border = El borde pasa por { $landmark }: vea si la impresión continúa más allá. Si no, repítala en una cubeta más larga o con el borde aumentado.
cut-short-near = El borde pasa muy cerca, justo tras { $landmark }: vea si la impresión continúa lo suficiente más allá.
cut-short-covered = Puede que la impresión recoja solo en parte { $landmark }: vea cuánto hay. Si falta una parte, repita la impresión en una cubeta más larga o con el borde aumentado.
cut-short-border = El borde es corto en { $landmark }: añada allí material de borde y { $mould }, { $then }.
obscured-by-hole = No se escaneó nada en { $landmark }: escanee de nuevo. Si falta material ahí, el lavado debe rellenarlo.
obscured-by-bump = Hay un abultamiento sobre { $landmark }. Mírelo; recorte lo que no pertenezca al tejido antes del vaciado.
obscured-by-bump-before-wash = Hay un abultamiento sobre { $landmark }. Mírelo; recorte lo que no pertenezca al tejido y tome el lavado encima.
obscured-by-void = Hay una burbuja o un pliegue sobre { $landmark }. Lo que deje en el modelo hay que recortarlo; si no se ve la superficie verdadera a su alrededor, repita el lavado.
obscured-by-void-before-wash = Hay una burbuja o un pliegue sobre { $landmark }. Seque el lugar para que el lavado lo rellene.
obscured-by-tray = La cubeta es visible en { $landmark }.
not-detected = No se detectó { $landmark }: { $why }. Busque este punto en la impresión y, si está, márquelo (tecla L en la ventana, o un archivo de puntos anatómicos).

## El lavado.

wash-thick = El lavado es más grueso que el límite en una vigésima parte de la superficie. Compruebe que la cubeta haya asentado por completo al tomar el lavado. Si la relación intermaxilar se registró antes del lavado, regístrela de nuevo.
wash-uneven = El lavado es mucho más grueso en unos lugares que en otros: la cubeta se inclinó o se desplazó al asentarla. Mire el mapa del lavado y compruebe el borde en la boca.
wash-open = El lavado no corrigió este punto.
wash-open-relieved = Si la cubeta se rebajó después del escaneo anterior al lavado, hay más material de lo que indica este valor: mírelo.
wash-open-unsure = No se puede decidir con seguridad si el lavado corrigió este punto: mírelo.

## El camino desde la clínica.

sent-same-file = Se indica el mismo archivo como escaneo de la impresión al enviarla y al llegar. Indique para cada momento su propio escaneo.
sent-other-scan = El escaneo indicado como el del envío no es de esta impresión: { $why }. Indique el escaneo que se hizo de esta impresión antes de enviarla, u omítalo. Si es ese escaneo, la impresión se distorsionó durante el envío: no trabaje con ella.
changed-heel = La impresión cambió en conjunto durante el envío: su extremo distal { $side ->
    [right] derecho
   *[left] izquierdo
} está { $moved } que al enviarla.
changed-heels = La impresión cambió en conjunto durante el envío: sus extremos distales están más { $apart ->
    [nearer] juntos
   *[farther] separados
} que al enviarla.
changed-size = Además es un { $percent } más { $size ->
    [smaller] pequeña
   *[larger] grande
}; la silicona de adición se contrae un 0,3 %, y la norma admite un 1,5 %. Pregunte si la cubeta se dobló, se aplastó en el envío o se apoyó sobre sus extremos distales. Si sigue así, no trabaje con ella: una prótesis hecha con ella no asentará.
changed-torn = En el borde falta material que estaba cuando se envió la impresión. Mire si se desgarró o se recortó a propósito. Si se desgarró, añada allí material de borde o repita la impresión.
changed-pressed-in = La superficie está más hundida que al enviar la impresión. Mire si está aplastada, arrancada o raspada. Si no recupera su forma, no trabaje a partir de este punto.
changed-stuck-on = Sobre la superficie hay algo que no estaba cuando se envió la impresión. Busque suciedad, una astilla o restos de desinfectante, enjuáguelo y escanee de nuevo.
changed-area = La zona abarca { $area }.

## El caso en conjunto.

impression-age = Desde la toma de la impresión ha pasado más tiempo que aquel durante el cual consta que su material conserva sus dimensiones. Siga las instrucciones del fabricante; si también según ellas ha pasado el tiempo, repita la impresión.
wash-missing = La { $jaw ->
    [upper] impresión superior
    [lower] impresión inferior
   *[other] otra impresión
} todavía no tiene lavado. Tome el lavado e indique su escaneo; si esta impresión no lo necesita, indíquela como hecha en un paso (--stage one-step, o `wash` en el archivo de caso).
interarch-space = Hay poco espacio entre los rebordes para los dientes y la base: compruebe la dimensión vertical y, si es correcta, avise al laboratorio.
ridge-angle = Los rebordes distan mucho de ser paralelos: las prótesis tenderán a deslizarse sobre ellos. Compruebe que el registro se haya tomado sin inclinar una cubeta y avise al laboratorio.
jaw-relation-not-judged = No se midió la relación intermaxilar: { $why }. Compruebe el escaneo del registro, o el registro a mano.
interocclusal-impossible = En reposo los maxilares están siempre más separados que en oclusión: una de las dos dimensiones verticales es errónea o se intercambiaron. Mida ambas de nuevo.
interocclusal-questioned = La distancia interoclusal está fuera del intervalo observado. Mida de nuevo ambas dimensiones verticales, tres veces cada una, y compruebe el registro con el habla y los labios.
interocclusal-unusual = La distancia interoclusal está fuera del intervalo habitual: compruebe ambas dimensiones verticales.
interocclusal-unsure = Demasiado cerca del límite para decidirlo. Mida ambas dimensiones verticales tres veces e indique las lecturas (vertical_dimension_readings_mm, rest_vertical_dimension_readings_mm).
lip-implausible = Esta longitud del labio superior está fuera del intervalo plausible. Mida de nuevo desde la base de la nariz hasta la línea labial en reposo.
lip-too-short = Es demasiado corta para la longitud de un labio superior desde la base de la nariz. Si se midió desde la papila incisiva, indíquela como papilla_to_lip_mm; si no, mida de nuevo.
papilla-implausible = Esta distancia está fuera del intervalo plausible. Mida de nuevo desde la papila incisiva hasta la línea labial en reposo.
papilla-too-long = Es demasiado larga para la distancia de la papila incisiva a la línea labial. Si se midió desde la base de la nariz, indíquela como upper_lip_length_mm; si no, mida de nuevo.

## El envío.

not-packed = No empaquetado: { $part }. Añádalo o quítelo de la lista.
parcel-no-list = No hay lista de lo que debe estar en el envío: indíquela como `expected` en [parcel].
parcel-no-record = El caso no contiene relación intermaxilar: indique el escaneo del registro o la dimensión vertical en [jaw_relation], o diga por qué no la hay (no_jaw_relation_because en [parcel]).
parcel-one-jaw = El caso contiene un solo maxilar: añada la impresión del otro, o diga por qué no la hay (one_arch_because en [parcel]).
prescription-not-enclosed = Adjunte la prescripción escrita.
prescription-not-stated = Indique si se adjunta la prescripción escrita (prescription = true), y adjúntela.
disinfectant-not-stated = Indique con qué se desinfectó el conjunto (disinfectant).
disinfection-not-stated = Indique con qué y durante cuánto tiempo se desinfectó el conjunto (disinfectant, disinfection_min). Si aún no se hizo, límpielo y desinféctelo antes de manipularlo.
disinfection-time-not-stated = Indique cuántos minutos se desinfectó el conjunto (disinfection_min).
disinfection-time-unusual = El tiempo de desinfección es inusual: compárelo con las instrucciones de los fabricantes del desinfectante y del elastómero, que prevalecen.
