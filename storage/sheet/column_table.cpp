// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/units.h"
#include "storage/sheet/column_names.h"

#include <array>

namespace bothways::storage {
namespace {

constexpr double kCelsiusBefore = -32.0;  // °C = (°F - 32) * 5 / 9, exactly
constexpr double kFeetPerMetre = 0.3048;  // exactly (international foot)
constexpr double kKmhPerKnot = 1.852;     // exactly (nautical mile)
constexpr double kHpaPerInHg = 33.863886; // at 0 °C (NIST SP 811, B.8)
constexpr double kHpaPerMmHg = 1.333224;  // the same

constexpr std::array kConsumptionForms = {
    UnitForm{"l_per_100km",
             "L/100 km|L/100|liter/100km|litre/100km|liters/100km|litres/100km|litros/100km|"
             "lper100km|literper100km|litresper100km|lauf100km|literauf100km|l/100kms|"
             "laux100km|laux100|litresaux100km|lalos100km|lpor100km|l100km|ltr/100km",
             0.0, 1.0, 1.0, true},
    UnitForm{"mpg_us",
             "MPG (US)|mpgus|usmpg|miles/gallon(us)|mi/gal(us)|milespergallon(us)|mi/galus", 0.0,
             1.0, 1.0, true},
    UnitForm{"mpg_imp",
             "MPG (imp)|mpgimp|mpg(uk)|mpguk|ukmpg|mpg(imperial)|impmpg|imperialmpg|mpgimperial|"
             "milespergallon(imp)|milespergallon(uk)|mi/gal(uk)|mi/gal(imp)",
             0.0, 1.0, 1.0, true},
    UnitForm{"km_per_l",
             "km/L|kmperl|km/liter|km/litre|km/litro|kmproliter|kmperlitre|km/ltr|kmprol", 0.0, 1.0,
             1.0, true},
    UnitForm{"kwh_per_100km", "kWh/100 km|kwh/100|kwhper100km|kwhauf100km|kwhaux100km|kwhpor100km",
             0.0, 1.0, 1.0, true},
    UnitForm{"kwh_per_100km", "Wh/km|whperkm", 0.0, 1.0, 10.0, true},
    UnitForm{"kwh_per_100km", "kWh/km|kwhperkm", 0.0, 100.0, 1.0, true},
    UnitForm{"fuel_l", "L|ltr|lt|liter|liters|litre|litres|litro|litros"},
    UnitForm{"fuel_l", "mL|milliliter|millilitre|millilitres|mililitros", 0.0, 1.0, 1000.0},
    UnitForm{"fuel_l",
             "gal (imp)|galimp|gal(uk)|galuk|impgal|ukgal|gallons(imp)|gallons(uk)|"
             "gallonsimp|gallonsuk|imperialgallons",
             0.0, core::kLitresPerImperialGallon, 1.0},
    UnitForm{"fuel_gal_us", "gal (US)|galus|usgal|gallons(us)|gallonsus|usgallons|gallon(us)"}};

// "MPG" says by itself what is measured, and not by which gallon.
constexpr std::array kMpgForms = {
    UnitForm{"mpg_us", "US|usgal|usgallon|usgallons|american|usa"},
    UnitForm{"mpg_imp", "imp|imperial|uk|gb|british|impgal|ukgal|imperialgallons"}};

constexpr std::array kDistanceForms = {
    UnitForm{"distance_km", "km|kilometer|kilometers|kilometre|kilometres|kilometros|kms", 0.0, 1.0,
             1.0, true},
    UnitForm{"distance_mi", "mi|mile|miles|meilen|milles|millas", 0.0, 1.0, 1.0, true},
    UnitForm{"distance_km", "m|meter|meters|metre|metres|metros", 0.0, 1.0, 1000.0}};

constexpr std::array kSpeedForms = {
    UnitForm{"speed_kmh", "km/h|kmh|kph|kmperh|kmprostunde|km/std|kmparheure|kmporhora", 0.0, 1.0,
             1.0, true},
    UnitForm{"speed_mph", "mph|mi/h|milesperhour|mih", 0.0, 1.0, 1.0, true},
    UnitForm{"speed_kmh", "m/s|ms", 0.0, 36.0, 10.0},
    UnitForm{"speed_kmh", "kn|kt|kts|knots|knoten|noeuds|nudos", 0.0, kKmhPerKnot, 1.0}};

constexpr std::array kDurationForms = {
    UnitForm{"duration_s", "s|sec|secs|seconds|sek|sekunden|secondes|segundos|seg"},
    UnitForm{"duration_s", "min|mins|minutes|minuten|minutos", 0.0, 60.0, 1.0},
    UnitForm{"duration_s", "h|hr|hrs|hours|std|stunden|heures|horas", 0.0, 3600.0, 1.0},
    // The cells say which part is which: "3:33" is minutes and seconds by these.
    UnitForm{"duration_s", "min:s|min:sec|m:s|m:ss|mm:ss|min:ss|min:sek"},
    UnitForm{"duration_s", "h:min:s|h:m:s|h:mm:ss|hh:mm:ss|hms"}};

constexpr std::array kWattForms = {UnitForm{"accessory_w", "W|watt|watts|vatios"},
                                   UnitForm{"accessory_w", "kW|kilowatt", 0.0, 1000.0, 1.0}};
constexpr std::array kOutputForms = {UnitForm{"output_w", "W|watt|watts|vatios"},
                                     UnitForm{"output_w", "kW|kilowatt", 0.0, 1000.0, 1.0}};
constexpr std::array kRotorForms = {
    UnitForm{"rotor_rpm_max", "rpm|1/min|u/min|min-1|r/min|upm|tr/min|tours/min|rev/min"}};
constexpr std::array kVoltStartForms = {UnitForm{"battery_v_start", "V|volt|volts|voltios"}};
constexpr std::array kVoltEndForms = {UnitForm{"battery_v_end", "V|volt|volts|voltios"}};
constexpr std::array kWindForms = {
    UnitForm{"wind_ms", "m/s|ms|metrespersecond"},
    UnitForm{"wind_ms", "km/h|kmh|kph", 0.0, 10.0, 36.0},
    UnitForm{"wind_ms", "mph|mi/h", 0.0, core::kKmPerMile * 10.0, 36.0},
    UnitForm{"wind_ms", "kn|kt|kts|knots|knoten|noeuds|nudos", 0.0, kKmhPerKnot * 10.0, 36.0},
    UnitForm{"wind_ms", "ft/s|fps", 0.0, kFeetPerMetre, 1.0}};
constexpr std::array kWindFromForms = {
    UnitForm{"wind_from_deg", "°|deg|degree|degrees|grad|degre|degres|grados"}};
constexpr std::array kTemperatureForms = {
    UnitForm{"temperature_c", "°C|c|degc|celsius|gradcelsius|gradc|ºc", 0.0, 1.0, 1.0, true},
    UnitForm{"temperature_c", "°F|f|degf|fahrenheit|ºf", kCelsiusBefore, 5.0, 9.0, true},
    UnitForm{"temperature_c", "K|kelvin", -273.15, 1.0, 1.0}};
constexpr std::array kPressureForms = {
    UnitForm{"pressure_hpa", "hPa|mbar|mb|millibar|hektopascal|hectopascal", 0.0, 1.0, 1.0, true},
    UnitForm{"pressure_hpa", "kPa|kilopascal", 0.0, 10.0, 1.0},
    UnitForm{"pressure_hpa", "Pa|pascal", 0.0, 1.0, 100.0},
    UnitForm{"pressure_hpa", "bar", 0.0, 1000.0, 1.0},
    UnitForm{"pressure_hpa", "inHg", 0.0, kHpaPerInHg, 1.0},
    UnitForm{"pressure_hpa", "mmHg|torr", 0.0, kHpaPerMmHg, 1.0}};
constexpr std::array kHumidityForms = {
    UnitForm{"humidity_pct", "%|pct|percent|prozent|%rh|rh%|rh|pourcent|porcentaje|%rf|%hr"}};

constexpr std::array kQuantities = {
    Quantity{"run|run no|run number|no|number|nr|#|trip no|pass no",
             "fahrt|fahrt nr|fahrtnummer|"
             "nummer|lfd nr|lauf|lauf nr|fahrt nummer",
             "n°|numero|essai|numero essai|passage|no essai",
             "n.º|nº|numero|ensayo|prueba|num",
             {},
             "run"},
    Quantity{"configuration|config|variant|device|setup|condition|state|with without|a b",
             "konfiguration|variante|zustand|gerät|geraet|aufbau|ausführung|mit ohne|ausfuehrung",
             "configuration|variante|dispositif|appareil|montage|etat|avec sans",
             "configuración|variante|dispositivo|equipo|estado|con sin|montaje",
             {},
             "configuration"},
    Quantity{"setting", "einstellung", "reglage", "ajuste", {}, "setting"},
    Quantity{"direction|dir|way|heading",
             "richtung|fahrtrichtung|fahrrichtung|weg hin zurück",
             "direction|sens|sens de marche",
             "dirección|sentido",
             {},
             "direction"},
    Quantity{
        "start|start time|time|begin|began|departure|date time|datetime|date and time|"
        "timestamp|started|time of day|started at|start at",
        "start|startzeit|beginn|uhrzeit|zeit|abfahrt|zeitpunkt|datum uhrzeit|datum und uhrzeit|"
        "datum zeit|zeitstempel|startuhrzeit|anfang",
        "debut|heure|heure de debut|depart|heure de depart|horodatage|date et heure|date heure",
        "inicio|hora|hora de inicio|salida|hora de salida|fecha y hora|fecha hora|comienzo",
        {},
        "start"},
    Quantity{"date|day|date of run", "datum|tag", "date|jour", "fecha|día", {}, kDateColumn},
    Quantity{"duration|time taken|elapsed|elapsed time|driving time|time|run time",
             "dauer|fahrzeit|"
             "zeit|fahrtdauer",
             "durée|temps|duree",
             "duración|tiempo",
             kDurationForms,
             {}},
    Quantity{"distance|length|stretch|trip|trip distance",
             "strecke|distanz|entfernung|länge|weg|"
             "fahrstrecke|laenge|streckenlänge",
             "distance|longueur|parcours|trajet",
             "distancia|recorrido|longitud",
             kDistanceForms,
             {}},
    Quantity{"speed|average speed|avg speed|mean speed|road speed",
             "geschwindigkeit|tempo|"
             "durchschnittsgeschwindigkeit|mittlere geschwindigkeit",
             "vitesse|vitesse moyenne",
             "velocidad|velocidad media",
             kSpeedForms,
             {}},
    Quantity{"consumption|fuel consumption|fuel|fuel used|fuel use|fuel economy|economy|mileage|"
             "average consumption|avg consumption|efficiency|energy consumption|energy|petrol|"
             "diesel|gasoline|gas",
             "verbrauch|kraftstoffverbrauch|durchschnittsverbrauch|spritverbrauch|kraftstoff|sprit|"
             "benzin|energieverbrauch|stromverbrauch|tankmenge|benzinverbrauch",
             "consommation|conso|carburant|consommation moyenne|essence|gazole|consommation de "
             "carburant|energie",
             "consumo|combustible|consumo medio|gasolina|gasóleo|consumo de combustible|energía",
             kConsumptionForms,
             {}},
    Quantity{"mpg|miles per gallon|mi gal",
             "mpg|meilen pro gallone",
             "mpg|milles par gallon",
             "mpg|millas por galón",
             kMpgForms,
             {}},
    Quantity{"control|control vehicle|reference vehicle|control car",
             "kontrolle|kontrollfahrzeug|"
             "vergleichsfahrzeug|referenzfahrzeug",
             "témoin|véhicule témoin|voiture témoin",
             "control|vehículo de control|vehículo testigo",
             {},
             "control"},
    Quantity{"status", "status", "statut", "estatus", {}, "status"},
    Quantity{"reason", "grund", "raison|motif", "motivo|razón", {}, "reason"},
    Quantity{"evidence", "beleg|nachweis", "preuve", "prueba de ello|evidencia", {}, "evidence"},
    Quantity{"pair|pair no", "paar|paar nr", "paire", "par|pareja", {}, "pair"},
    Quantity{"marks", "marken", "marques", "marcas", {}, "marks"},
    Quantity{"accessory power|accessories power|electrical load|aux power",
             "nebenverbraucher|leistung der verbraucher|bordnetzleistung|elektrische last",
             "puissance des accessoires|charge electrique",
             "potencia de accesorios|carga eléctrica",
             kWattForms,
             {}},
    Quantity{"accessories", "zubehör|verbraucher", "accessoires", "accesorios", {}, "accessories"},
    Quantity{"output|power output|device output|generated power",
             "abgabe|leistung|erzeugte leistung|"
             "abgegebene leistung",
             "puissance|puissance produite",
             "potencia|potencia generada",
             kOutputForms,
             {}},
    Quantity{"rotor speed|max rotor speed|rotor rpm",
             "rotordrehzahl|drehzahl rotor|drehzahl|max drehzahl",
             "regime du rotor|vitesse du rotor", "velocidad del rotor|régimen del rotor",
             kRotorForms, "rotor_rpm_max"},
    Quantity{"battery start|battery voltage start|voltage start",
             "batterie start|spannung start|"
             "batteriespannung start",
             "batterie debut|tension debut", "batería inicio|tensión inicio", kVoltStartForms,
             "battery_v_start"},
    Quantity{"battery end|battery voltage end|voltage end",
             "batterie ende|spannung ende|"
             "batteriespannung ende",
             "batterie fin|tension fin", "batería fin|tensión fin", kVoltEndForms, "battery_v_end"},
    Quantity{"wind|wind speed|windspeed",
             "wind|windgeschwindigkeit|windstärke|windstaerke",
             "vent|vitesse du vent",
             "viento|velocidad del viento",
             kWindForms,
             {}},
    Quantity{"wind direction|wind from|wind dir", "windrichtung|wind aus",
             "direction du vent|vent de", "dirección del viento|viento de", kWindFromForms,
             "wind_from_deg"},
    Quantity{"temperature|temp|air temperature|ambient temperature|outside temperature|air temp",
             "temperatur|lufttemperatur|außentemperatur|aussentemperatur",
             "température|temperature de l air|température extérieure",
             "temperatura|temperatura del aire|temperatura exterior",
             kTemperatureForms,
             {}},
    Quantity{"pressure|air pressure|barometric pressure|barometer",
             "druck|luftdruck",
             "pression|pression atmosphérique",
             "presión|presión atmosférica",
             kPressureForms,
             {}},
    Quantity{"humidity|relative humidity|rh",
             "feuchte|luftfeuchte|luftfeuchtigkeit|relative feuchte|"
             "relative luftfeuchte",
             "humidité|humidité relative|hygrometrie", "humedad|humedad relativa", kHumidityForms,
             "humidity_pct"},
    Quantity{"trace|recording|log file",
             "aufzeichnung",
             "enregistrement",
             "grabación|registro",
             {},
             "trace"},
    Quantity{"notes|note|remark|remarks|comment|comments",
             "notiz|notizen|bemerkung|bemerkungen|"
             "anmerkung|anmerkungen|kommentar",
             "notes|remarque|remarques|commentaire|commentaires",
             "notas|nota|observaciones|comentario|comentarios",
             {},
             "notes"}};

} // namespace

std::span<const Quantity> quantities()
{
    return kQuantities;
}

} // namespace bothways::storage
