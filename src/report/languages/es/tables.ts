/** Remarks on reading tables. */
export const tables: Readonly<Record<string, string>> = {
  "{1}: its decimal mark was taken from the other files": "{1}: su signo decimal se tomó de los demás archivos",
  "{1}: its stamps mark the start of the interval": "{1}: sus marcas de tiempo señalan el inicio del intervalo",
  "{1}: its stamps mark the end of the interval": "{1}: sus marcas de tiempo señalan el final del intervalo",
  "by the name of the month": "por el nombre del mes",
  "year first": "primero el año",
  "as given": "como se indicó",
  "by the point between the numbers": "por el punto entre los números",
  "all orders mean the same days here": "aquí todos los órdenes significan los mismos días",
  "no other order fits all dates": "ningún otro orden encaja con todas las fechas",
  "only so do the days follow one another": "solo así se suceden los días",
  "{1}: its column holds no value and was left out": "{1}: su columna no contiene ningún valor y se dejó fuera",
  "{1}: logged without its mean, so it was left out": "{1}: registrado sin su media, por lo que se dejó fuera",
  "{1}: its newest row stands first; it was read from its end":
    "{1}: su fila más reciente está al principio; se leyó desde el final",
  "seconds since 1970-01-01 UTC": "segundos desde 1970-01-01 UTC",
  "milliseconds since 1970-01-01 UTC": "milisegundos desde 1970-01-01 UTC",
  "days since 1899-12-30, as spreadsheets count them": "días desde 1899-12-30, como los cuentan las hojas de cálculo",
  "day, month, year": "día, mes, año",
  "12-hour clock": "reloj de 12 horas",
  "{1} {2} with offset from UTC": "{1} {2} con desfase respecto de UTC",
  "date and time in two columns": "fecha y hora en dos columnas",
  "in {1} by the header": "en {1} según el encabezado",
  "the time of each row": "la hora de cada fila",
  "not used: a time beside the one that is used": "no usada: una hora además de la que se usa",
  "not recognised": "no reconocida",
  "{1}, {2}: the last line is cut off and was left out": "{1}, {2}: la última línea está truncada y se dejó fuera",
  "{1}: the header is repeated {2} among the rows": "{1}: el encabezado se repite {2} entre las filas",
  "{1}: a stamp without a time of day was read as midnight ({2})":
    "{1}: una marca de tiempo sin hora del día se leyó como medianoche ({2})",
  once: "una vez",
  "{1}: the distance of rows is off its interval by up to {2}":
    "{1}: la distancia entre filas se aparta de su intervalo hasta {2}",
  "{1}: {2} stamps beside their tick were put on it; the farthest was {3} away":
    "{1}: {2} marcas de tiempo que no caían en su instante teórico se llevaron a él; la más alejada distaba {3}",
  "{1} ms": "{1} ms",
};
