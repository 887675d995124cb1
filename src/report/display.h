#pragma once

#include <cstddef>
#include <initializer_list>
#include <optional>
#include <string>

#include "bait/pack.h"
#include "quantities/date.h"
#include "quantities/quantity.h"
#include "quantities/temperature.h"
#include "report/significant.h"

/// Amounts as a person reads them, with the digits that the knowledge behind them bears. The only rounding for display.
/// What says so is told in the units of `report/shown_units.h`: masses in ounces first where these come first, and so
/// on.
namespace baitwright {

/// "435 g"; from 10 kg up "12.4 kg". In ounces as `ounces_text`.
std::string shown_mass(Mass mass);
/// As a kitchen scale shows it, a pinch to the tenth: "435 g", "0.3 g". In ounces a pinch has its grams beside it, for
/// the scale that can weigh it: "0.18 oz (5 g)".
std::string shown_weighed(Mass mass);
/// A range in the unit of its upper end: "465 to 545 g".
std::string shown_mass(Mass low, Mass high);
/// An additive as it is measured: "0.3 g", "15 ml"; in imperial units likewise "0.53 fl oz (15 ml)".
std::string shown_dose(Mass mass);
std::string shown_dose(Volume volume);
/// "435 g", whatever the units shown.
std::string shown_grams(Mass mass);
/// What a column of masses is headed by: "grams", "ounces".
std::string mass_head();
/// A mass in the units that do not come first: "14.1 oz", "400 g"; empty where one is enough.
std::string other_mass(Mass mass);
/// What is asked of a scale: in grams by the steps of a kitchen scale (`kitchen_mass`); in ounces to the tenth that
/// they are told in anyway, so that a pound that is asked for is a pound. Never nothing where there is anything.
Mass scale_mass(Mass mass);
/// What is asked of a jug, likewise: by its millilitres (`kitchen_water`), or as it is where pints are shown.
Mass jug_water(Mass water);
/// Whatever of these is not empty: " (14.1 oz, 1.3 pt)", or nothing.
std::string in_brackets(std::initializer_list<std::string> amounts);
/// A pack as the shop labels it, whatever the units shown: "900 g", "2.5 kg"; "1 lb", "8 oz" where it is no round
/// metric size, but whole or half pounds or ounces.
std::string shown_pack(Mass mass);
/// The same by what a shop sells it by: "900 g", "570 ml"; "1 pt", "0.5 pt" likewise.
std::string shown_pack(const Pack& pack);
/// The same as it is typed, that very size: the label where it says all, "738.7 ml" where it does not.
std::string typed_pack(const Pack& pack);

/// "1 thing has no price", "4 things have no price; 1 thing is priced in another currency": why a sum is the least that
/// it can be. Empty for none.
std::string no_price_text(std::size_t things, std::size_t elsewhere);
/// "14.1 oz"; from a pound up "2 lb 3 oz"; whatever the units shown.
std::string shown_ounces(Mass mass);
/// "625 ml"; from 10 l up "12.4 l". A range in the unit of its upper end: "580 to 935 ml". In the imperial system as
/// `measured_pints_text`: "1 pt 2 fl oz".
std::string shown_water(Mass water);
std::string shown_water(Mass low, Mass high);
/// The same water in pints, "1.3 pt", where both systems are shown; else empty.
std::string other_water(Mass water);
/// An estimated volume, two digits: "640 ml", "2.6 l", "13 l"; "4.6 pt". A range likewise: "2.6 to 3.6 l".
std::string shown_volume(Volume volume);
std::string shown_volume(Volume low, Volume high);
/// The same in the units that do not come first: "4.6 pt", "2.6 l"; empty where one is enough.
std::string other_volume(Volume volume);
/// "4.6 pt", two digits, whatever the units shown.
std::string shown_pints(Volume volume);
/// How much room dry bait takes, in pints unless the units shown are metric: "1.3 pt", "740 ml".
std::string shown_loose(Volume volume);
/// What a cup, a pump or a helping holds, in pints only in the imperial system: "250 ml", "8.8 fl oz".
std::string shown_vessel(Volume volume);
/// A helping; of less than 20 ml without a nought to spare: "5 ml", "250 ml".
std::string shown_helping(Volume volume);
/// To 5 min from 10 min up, to the hour from 8 h up: "8 min", "25 min", "2 h 10 min", "17 h"; "less than a minute".
std::string shown_time(Time time);
/// As it was written: to the minute, not to five: "45 min", "5.25 h".
std::string shown_moment(Time time);
/// A time between put-ins, as exactly as it was chosen: "80 s", "7.5 min", "1 h 10 min".
std::string shown_gap(Time gap);
/// A soak, which a minute more or less can spoil: "25 s", "1.5 min", "13 min"; from 20 min as `shown_time`.
std::string shown_soak_time(Time time);
/// "4 to 9 min", in the unit of its upper end: "20 to 60 s", from an hour up "50 min to 2 h".
std::string shown_soak_time(Time low, Time high);
/// An estimated length: "6 cm", "0.55 m", "1.2 m", "12 m". A range likewise: "4 to 9 cm", "0.37 to 0.83 m",
/// "0.08 to 1.7 m". In feet as `estimated_feet_text`: "1 ft 10 in".
std::string shown_length(Length length);
std::string shown_length(Length low, Length high);
/// A length that a person stated, to the centimetre or to the inch: "2.44 m", "3 m"; "8 ft", "12 ft 3 in".
std::string shown_as_told(Length length);
/// What a hand covers, beside a count of grains: "10 x 10 cm", "4 x 4 in".
std::string shown_hand();
/// "40 %", or "2.5 %" below 10.
std::string shown_percent(Ratio share);
/// To a whole per cent; what is a half but for the last digits that it was computed to rounds up.
std::string shown_whole_percent(double share);
/// "12 degC", "54 degF".
std::string shown_temperature(Temperature temperature);
/// A count of grains, two digits: "about 12,000".
std::string shown_count(double count);
/// Whole things: "18 to 22".
std::string shown_count_range(double low, double high);
/// A plain ratio: "0.55".
std::string shown_ratio(Ratio ratio);

}  // namespace baitwright
