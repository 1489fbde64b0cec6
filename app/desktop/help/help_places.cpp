// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/help/help_places.h"

#include "app/desktop/look/help_topics.h"
#include "app/desktop/look/late_page.h"

#include <QTabWidget>

#include <algorithm>
#include <array>

namespace bothways::app {
namespace {

constexpr std::array kPlaces{
    // the work
    HelpPlace{"startPage", "index"},
    HelpPlace{"runList", "why_pairs"},
    HelpPlace{"runForm", "roadside"},
    HelpPlace{"discardDialog", "window#discarding-a-run"},
    HelpPlace{"findingsPanel", "rules"},
    HelpPlace{"notCheckedDialog", "rules"},
    HelpPlace{"historyPanel", "window#history-and-undo"},
    HelpPlace{"blindPage", "window#blind-screening"},
    HelpPlace{"importProblems", "window#run-sheets"},
    // the result
    HelpPlace{"resultPage", "verdict"},
    HelpPlace{"margin", "verdict#the-interval-and-the-margin"},
    HelpPlace{"confidence", "verdict#the-interval-and-the-margin"},
    HelpPlace{"companionsPage", "companions"},
    HelpPlace{"leavePlot", "verdict#sensitive"},
    HelpPlace{"restoredPlot", "companions#discards-put-back"},
    HelpPlace{"restoredTable", "companions#discards-put-back"},
    HelpPlace{"checksPage", "checks"},
    HelpPlace{"whyPage", "method"},
    HelpPlace{"compareDialog", "companions#several-studies"},
    // before the day
    HelpPlace{"planPage", "planning"},
    HelpPlace{"ledgerPage", "ledger"},
    // recordings and the roadside
    HelpPlace{"traceView", "recordings"},
    HelpPlace{"recordingsPanel", "recordings"},
    HelpPlace{"traceImportDialog", "recordings"},
    HelpPlace{"cuttingDialog", "recordings#cutting-a-recording-into-runs"},
    HelpPlace{"roadsidePage", "roadside#roadside-mode"},
    HelpPlace{"rigDialog", "live#the-rig"},
    HelpPlace{"calibrationDialog", "live#the-rig"},
    HelpPlace{"watchPanel", "live#the-watch-page"},
    HelpPlace{"alarmBand", "live#alarms"},
    HelpPlace{"stopRecordingFirst", "live#recording"},
    // the study and the program
    HelpPlace{"studyProperties", "window#properties-of-a-study"},
    HelpPlace{"renameDialog", "window#a-name-that-was-mistyped"},
    HelpPlace{"stretchPage", "window#properties-of-a-study"},
    HelpPlace{"limitsPage", "rules"},
    HelpPlace{"accessoriesPage", "rules#accessory_timer"},
    HelpPlace{"preferencesDialog", "window#preferences"},
    HelpPlace{"keysDialog", "window#keys"},
};

QString ownTopic(const QWidget& widget)
{
    if (QString topic = helpTopicOf(widget); !topic.isEmpty())
        return topic;
    const auto place = std::find_if(kPlaces.begin(), kPlaces.end(), [&](const HelpPlace& known) {
        return widget.objectName() == QLatin1String(known.object);
    });
    return place == kPlaces.end() ? QString() : QString::fromLatin1(place->topic);
}

const QWidget* pageOn(const QTabWidget& tabs)
{
    const auto* late = qobject_cast<const LatePage*>(tabs.currentWidget());
    return late ? late->made() : tabs.currentWidget();
}

} // namespace

std::span<const HelpPlace> helpPlaces()
{
    return kPlaces;
}

QString helpTopicAt(const QWidget* focus)
{
    for (const QWidget* widget = focus; widget; widget = widget->parentWidget()) {
        if (QString topic = ownTopic(*widget); !topic.isEmpty())
            return topic;
        // The keyboard is on the tabs: what they show counts.
        if (const auto* tabs = qobject_cast<const QTabWidget*>(widget))
            if (const QWidget* page = pageOn(*tabs))
                if (QString topic = ownTopic(*page); !topic.isEmpty())
                    return topic;
    }
    return QStringLiteral("index");
}

} // namespace bothways::app
