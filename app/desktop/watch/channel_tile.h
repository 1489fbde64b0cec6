// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/theme.h"
#include "app/desktop/watch/channel_band.h"

#include <QAbstractButton>

#include <optional>
#include <vector>

class QPainter;

namespace bothways::app {

/// One channel: its number in the largest type that fits, where it lies in its band, and the last
/// minute as a strip. A click asks for another channel in its place.
class ChannelTile final : public QAbstractButton {
    Q_OBJECT

public:
    struct Shown {
        QString name, unit;
        QString value; ///< an en dash: nothing came
        ChannelBand band;
        ChannelBand::Place place = ChannelBand::Place::unknown;
        QString bandWords;   ///< "at most 3,200"; empty: no limit
        double factor = 1.0; ///< from the recording's unit to the one shown: of strip and band
        std::optional<double> number; ///< in the recording's unit
        std::vector<float> low, high; ///< the last minute, see LiveChannel
        int part = 0;                 ///< which of the parts of its kind: told apart by the strip
        bool stale = false;           ///< nothing has come for longer than it should
    };

    explicit ChannelTile(QWidget* parent = nullptr);
    void setShown(Shown shown);
    [[nodiscard]] const Shown& shownNow() const { return m_shown; }
    void setTheme(const Theme& theme);
    [[nodiscard]] QSize sizeHint() const override { return {1, 1}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {1, 1}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Room {
        QRect caption, number, band, strip;
    };
    [[nodiscard]] Room room() const;
    struct Look {
        QColor fill, ink, faint, edge;
    };
    [[nodiscard]] Look look() const;
    void paintNumber(QPainter& painter, const Room& room, const Look& look) const;
    void paintStrip(QPainter& painter, const QRect& room, const Look& look) const;

    Shown m_shown;
    Theme m_theme = Theme::light();
};

} // namespace bothways::app
