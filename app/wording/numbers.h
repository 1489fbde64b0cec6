// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"

#include <string>
#include <vector>

/// How the program writes numbers for people: sensible digits, words in place of signs, in the
/// reader's language. Files and JSON do not use these.
namespace bothways::app {

/// `digits` as fmt writes a number, with the reader's decimal sign.
[[nodiscard]] std::string localised(const Language& in, std::string digits);
/// With a fixed number of decimals; a value that rounds to nothing has no minus.
[[nodiscard]] std::string fixed(const Language& in, double value, int decimals);
/// The same with commas between thousands: "3,410".
[[nodiscard]] std::string grouped(const Language& in, double value, int decimals = 0);
/// A length of time: "3:07", "1:02:45". A negative one is "0:00".
[[nodiscard]] std::string lengthOf(double seconds);
/// The shortest text: "1", "0.5", "95". Rounded to 9 digits, so that 100 * 0.95 is "95".
[[nodiscard]] std::string shortest(const Language& in, double value);
/// `value` with about `digits` significant digits and no exponent: "0.064", "12", "3,400".
[[nodiscard]] std::string significant(const Language& in, double value, int digits = 2);
/// What significant() writes, before it is written.
struct Rounded {
    double value = 0.0;
    int decimals = 0;
};
[[nodiscard]] Rounded roundedTo(double value, int digits);

/// Decimals that give `uncertainty` two significant digits; 0 to 4.
///
/// Source of the habit: JCGM 100:2008 (GUM), 7.2.6: an uncertainty is quoted to at most two
/// significant digits.
[[nodiscard]] int decimalsFor(double uncertainty);
/// `decimals`, or as many more, up to 4, as show that `value` is not nothing.
[[nodiscard]] int decimalsThatShow(double value, int decimals);

/// "1.2 % less", "1.2 % more"; "0.0 %" when it rounds to nothing.
[[nodiscard]] std::string change(const Language& in, double pct, int decimals);
/// "0.4 % to 2.0 % less" (small to large), "0.1 % less to 1.7 % more".
///
/// An end that rounds to nothing gets the digits that show on which side of zero it lies.
[[nodiscard]] std::string changeRange(const Language& in, double low_pct, double high_pct,
                                      int decimals);
/// The same after "between": "0.1 % less and 1.7 % more".
[[nodiscard]] std::string changeBetween(const Language& in, double low_pct, double high_pct,
                                        int decimals);

/// "p = 0.064", "p < 0.001".
[[nodiscard]] std::string pText(const Language& in, double p);
/// "95 %" of 0.95.
[[nodiscard]] std::string percentText(const Language& in, double share);
/// The same before the word "interval", with which German makes one word of it.
[[nodiscard]] std::string intervalPercent(const Language& in, double share);
/// "1 pair", "3 pairs": counted(in, n, "pair"_t, "pairs"_t). Where a language declines what is
/// counted, say the whole sentence twice instead: Language::sayCount().
[[nodiscard]] std::string counted(const Language& in, long long n, core::Text<0> one,
                                  core::Text<0> many);
/// "A, B and C".
[[nodiscard]] std::string joined(const Language& in, const std::vector<std::string>& parts);
/// "A, B or C".
[[nodiscard]] std::string anyOf(const Language& in, const std::vector<std::string>& parts);

} // namespace bothways::app
