### Lo que muestra `archproof demo`, y el README.txt junto a sus casos.

demo-written = La demostración está escrita; todo en ella es inventado. Compruébela con:
demo-read-me =
    Casos de demostración de archproof. Todo lo que contienen es inventado: los escaneos se
    generaron con fórmulas y ese paciente no existe.

        archproof check first-pass.toml

    Con el paciente todavía en el sillón: una impresión superior antes del lavado, en una
    cubeta de existencias, escaneada por todos los lados, y un escaneo de la misma cubeta,
    vacía, en sus propias coordenadas. En el lado derecho del paciente, la cubeta se presionó
    demasiado hacia arriba: allí es visible en la cresta del reborde y en el paladar, junto a
    la línea media. En el lado izquierdo, el material es delgado en la vertiente vestibular
    anterior. El dictamen debería ser «retocar», y el resultado debería nombrar los dos
    lugares con cubeta visible y el lugar delgado. En la carpeta archproof-DEMO-1 quedan
    report.html, el mapa de grosores y result.json.

        archproof check case.toml

    Antes de que salga el envío: ambos maxilares, cada uno antes y después del lavado, con su
    cubeta, el escaneo del registro intermaxilar y la lista de lo empaquetado. El lavado cubre
    el paladar y el lugar delgado, pero apenas lo hay donde la cubeta era visible en la cresta:
    ahí sigue visible. En el maxilar inferior, el borde lingual es corto en el lado izquierdo
    del paciente, y en el derecho el aire dejó una burbuja en el reborde. El registro no se
    empaquetó. El dictamen debería ser «retocar», y el resultado debería mostrar dónde está
    cada uno de estos defectos.
demo-read-me-in-pieces =
    Un caso de demostración en partes para archproof. Todo lo que contiene es inventado: los
    escaneos se generaron con fórmulas y ese paciente no existe.

        archproof check case.toml

    Antes de que salga el envío: ambas impresiones de lavado se dividieron para la relación
    intermaxilar, que se registró entre sus partes anteriores. La impresión superior se cortó
    junto con su cubeta y no se escaneó hasta después: cada parte está en sus propias
    coordenadas, y el escaneo de la cubeta vacía entera indica cómo encajan. La impresión
    inferior se escaneó entera. Su cubeta consta de dos piezas, de las que solo se dispone de
    escaneos por separado. En el lado derecho del reborde superior, detrás del corte, apenas
    hay lavado: la cubeta es visible. En el maxilar inferior, el borde lingual es corto en el
    lado izquierdo del paciente, y en el derecho el aire dejó una burbuja en el reborde. La
    parte posterior de la impresión superior no se empaquetó. El dictamen debería ser
    «retocar», y el resultado debería mostrar dónde está cada uno de estos defectos. Los
    archivos quedan en la carpeta archproof-DEMO-4.
