// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"

#include <QString>
#include <QStringList>

#include <span>
#include <string>

namespace bothways::app {

/// A channel as a person reads it.
struct ChannelShown {
    QString label;       ///< "road speed, km/h"
    double factor = 1.0; ///< from the recording's unit
};
/// @param name  of the channel; ours in words, the logger's own as they are
/// @param unit  as recorded; for the logger's own
[[nodiscard]] ChannelShown channelShown(const std::string& name, const std::string& unit,
                                        const UnitsShown& units);

/// Names that the rules and the consumption are taken from: offered where a channel is named.
[[nodiscard]] std::span<const char* const> ourChannels();

/// Those of ours that a device of several parts has once for each part, of this part:
/// "rotor_rpm@left".
[[nodiscard]] QStringList channelsOfPart(const QString& part);
/// The part that a column of a logger names, after its '@' or by a usual word ("Rotor left rpm":
/// "left"); empty where it names none.
[[nodiscard]] QString partNamedIn(const QString& column);
/// Which part of its kind a channel is of, by their order in `channels`: 0 for the first, and for
/// one that is of no part.
[[nodiscard]] int placeOfPart(const QString& channel, const QStringList& channels);

/// The channel that says what another was told to be: "setting_set" for "setting"; empty: none.
[[nodiscard]] std::string setPointOf(const std::string& channel);
/// True for a set point: it is drawn with what it sets.
[[nodiscard]] bool isSetPoint(const std::string& channel);
/// Channels worth seeing first, in their order; the rest as recorded.
[[nodiscard]] QStringList inUsualOrder(QStringList channels);

} // namespace bothways::app
