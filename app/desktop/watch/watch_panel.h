// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "app/desktop/watch/channel_tile.h"
#include "app/live/live_session.h"

#include <QStringList>
#include <QWidget>

#include <vector>

namespace bothways::app {

/// What is chosen to be seen: at most six, those that were asked for first, then the usual ones.
/// @param blind  what tells consumption is left out, asked for or not
[[nodiscard]] QStringList channelsToWatch(const LiveSnapshot& snapshot, const QStringList& asked,
                                          bool blind);

/// A channel as its tile has it.
[[nodiscard]] ChannelTile::Shown tileOf(const LiveChannel& channel, double now_s,
                                        const core::Study& study, const UnitsShown& units);

/// Six channels of a recording that is being made, as numbers and strips.
class WatchPanel final : public QWidget {
    Q_OBJECT

public:
    static constexpr int kChannels = 6;

    explicit WatchPanel(int columns, QWidget* parent = nullptr);
    void showLive(const LiveSnapshot& snapshot, const QStringList& channels,
                  const core::Study& study, const UnitsShown& units);
    void setTheme(const Theme& theme);
    [[nodiscard]] const std::vector<ChannelTile*>& tiles() const { return m_tiles; }
    [[nodiscard]] QSize sizeHint() const override { return {1, 1}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {1, 1}; }

signals:
    void anotherWanted(int tile); ///< another channel in this place

private:
    std::vector<ChannelTile*> m_tiles;
};

/// The channel that comes after `now` in this place: of those that are not on show.
[[nodiscard]] QStringList withNextChannel(const LiveSnapshot& snapshot, QStringList shown,
                                          int place, bool blind);

} // namespace bothways::app
