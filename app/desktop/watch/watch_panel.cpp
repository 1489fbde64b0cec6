// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/watch_panel.h"

#include "app/desktop/look/said.h"
#include "app/desktop/plots/trace_channels.h"
#include "app/desktop/recordings/trace_loader.h"
#include "core/study/parts.h"

#include <QGridLayout>

#include <algorithm>
#include <cmath>

namespace bothways::app {
namespace {

constexpr double kStale_s = 3.0; // three times what the slowest usual instrument takes
constexpr double kSlowSamples = 3.0;

/// Those that may be shown, the usual ones first.
QStringList channelsThatCome(const LiveSnapshot& snapshot, bool blind)
{
    std::vector<QString> names;
    for (const LiveChannel& channel : snapshot.channels)
        if (!blind || !tellsConsumption(channel.name))
            names.push_back(QString::fromStdString(channel.name));
    QStringList bases;
    for (const QString& name : names)
        bases += name.section(u'@', 0, 0);
    bases = inUsualOrder(bases);
    const auto place = [&](const QString& name) {
        const QString base = name.section(u'@', 0, 0);
        const bool rare =
            base.startsWith("lat_") || base.startsWith("lon_") || isSetPoint(base.toStdString());
        return bases.indexOf(base) + (rare ? bases.size() : 0);
    };
    std::stable_sort(names.begin(), names.end(),
                     [&](const QString& a, const QString& b) { return place(a) < place(b); });
    return {names.begin(), names.end()};
}

int decimalsOf(double value, const QString& unit)
{
    const double size = std::abs(value);
    if (size >= 100.0 || unit == "rpm" || unit == "W")
        return 0;
    return size >= 10.0 ? 1 : 2;
}

const LiveChannel* channelNamed(const LiveSnapshot& snapshot, const QString& name)
{
    for (const LiveChannel& channel : snapshot.channels)
        if (name == QString::fromStdString(channel.name))
            return &channel;
    return nullptr;
}

QString bandWords(const ChannelBand& band, double factor, const UnitsShown& units)
{
    const auto number = [&](double value) { return units.fieldText(value * factor, 1); };
    if (band.low && band.high)
        return WatchPanel::tr("%1 to %2").arg(number(*band.low), number(*band.high));
    //: the highest value that a channel may have
    return band.high ? WatchPanel::tr("≤ %1").arg(number(*band.high)) : QString();
}

} // namespace

QStringList channelsToWatch(const LiveSnapshot& snapshot, const QStringList& asked, bool blind)
{
    const QStringList all = channelsThatCome(snapshot, blind);
    QStringList chosen;
    for (const QString& name : asked + all)
        if (chosen.size() < WatchPanel::kChannels && all.contains(name) && !chosen.contains(name))
            chosen += name;
    return chosen;
}

QStringList withNextChannel(const LiveSnapshot& snapshot, QStringList shown, int place, bool blind)
{
    const QStringList all = channelsThatCome(snapshot, blind);
    if (place >= shown.size())
        return shown;
    const auto from = all.indexOf(shown[place]);
    for (qsizetype i = 1; i < all.size(); ++i) {
        const QString& next = all[(from + i) % all.size()];
        if (!shown.contains(next)) {
            shown[place] = next;
            break;
        }
    }
    return shown;
}

ChannelTile::Shown tileOf(const LiveChannel& channel, double now_s, const core::Study& study,
                          const UnitsShown& units)
{
    const core::PartedName name = core::partedName(channel.name);
    const ChannelShown known = channelShown(std::string(name.base), channel.unit, units);
    ChannelTile::Shown shown;
    const QString base = QString::fromUtf8(name.base.data(), static_cast<int>(name.base.size()));
    const bool theirs = known.label.startsWith(base); // it may have a comma of its own
    shown.name = theirs ? nameShown(base.toStdString()) : known.label.section(", ", 0, 0);
    shown.unit = theirs ? nameShown(channel.unit) : known.label.section(", ", 1);
    if (base == "setting")
        shown.name = shown.name.section(u' ', 0, 0); // the rest is about the plot's lines
    if (!name.part.empty())
        shown.name = WatchPanel::tr("%1, %2").arg(shown.name, nameShown(std::string(name.part)));
    shown.factor = known.factor;
    shown.band = bandOf(study, channel.name);
    shown.bandWords = bandWords(shown.band, known.factor, units);
    shown.low = channel.low;
    shown.high = channel.high;
    const double late_s =
        std::max(kStale_s, channel.rate_hz > 0.0 ? kSlowSamples / channel.rate_hz : 0.0);
    shown.stale = !channel.last_s || now_s - *channel.last_s > late_s;
    shown.number = channel.value;
    shown.value = QString(QChar(0x2013));
    if (channel.value && std::isfinite(*channel.value)) {
        const double value = *channel.value * known.factor;
        shown.value = units.number(value, decimalsOf(value, QString::fromStdString(channel.unit)));
    }
    if (!shown.stale)
        shown.place =
            shown.band.isSet() ? shown.band.of(channel.value) : ChannelBand::Place::unknown;
    return shown;
}

WatchPanel::WatchPanel(int columns, QWidget* parent) : QWidget(parent)
{
    setObjectName("watchPanel");
    setAccessibleName(tr("Channels"));
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(6);
    for (int i = 0; i < kChannels; ++i) {
        auto* tile = new ChannelTile(this);
        tile->setObjectName(QString("tile%1").arg(i));
        grid->addWidget(tile, i / columns, i % columns);
        grid->setColumnStretch(i % columns, 1);
        grid->setRowStretch(i / columns, 1);
        connect(tile, &QAbstractButton::clicked, this, [this, i] { emit anotherWanted(i); });
        m_tiles.push_back(tile);
    }
}

void WatchPanel::showLive(const LiveSnapshot& snapshot, const QStringList& channels,
                          const core::Study& study, const UnitsShown& units)
{
    QStringList all;
    for (const LiveChannel& channel : snapshot.channels)
        all += QString::fromStdString(channel.name);
    for (std::size_t i = 0; i < m_tiles.size(); ++i) {
        const LiveChannel* channel =
            static_cast<qsizetype>(i) < channels.size()
                ? channelNamed(snapshot, channels[static_cast<qsizetype>(i)])
                : nullptr;
        m_tiles[i]->setVisible(channel != nullptr);
        if (!channel)
            continue;
        ChannelTile::Shown shown = tileOf(*channel, snapshot.now_s, study, units);
        shown.part = placeOfPart(QString::fromStdString(channel->name), all);
        m_tiles[i]->setShown(std::move(shown));
    }
}

void WatchPanel::setTheme(const Theme& theme)
{
    for (ChannelTile* tile : m_tiles)
        tile->setTheme(theme);
}

} // namespace bothways::app
