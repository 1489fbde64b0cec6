// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/study_files.h"

#include "core/properties.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

#include <cassert>
#include <utility>

/// Outside of every namespace, as Qt's macro wants it.
static void initResources()
{
    Q_INIT_RESOURCE(bothways_demo);
}

namespace bothways::app {
namespace {

// What app/run.sh makes the same study with; a test compares the two.
constexpr std::pair<const char*, const char*> kProperties[] = {
    {"name", "Ram-air generator on the levee road (invented)"},
    {"baseline", "off"},
    {"margin", "1"},
    {"fuel", "diesel"},
    {"bearing_deg", "75"},
    {"stretch.km", "5"},
    {"road_speed.target_kmh", "90"},
    {"overspeed.rpm", "3200"},
    {"accessory_change.declared_w", "900"},
    {"accessory_timer.windscreen", "600,10"},
};

core::StudyProperties demoProperties()
{
    core::StudyProperties properties;
    for (const auto& [name, value] : kProperties) {
        const core::Outcome set = core::setProperty(properties, name, value);
        assert(set);
    }
    return properties;
}

} // namespace

StudyDocument::Opened makeDemoStudy()
{
    initResources();
    QFile sheet(":/demo/levee_generator.csv");
    if (!sheet.open(QIODevice::ReadOnly))
        return core::Error{core::ErrorCode::studyFile, "the demo's run sheet is missing", {}};
    auto read =
        storage::parseRunSheet(sheet.readAll().toStdString(), "levee_generator.csv", {}, nullptr);
    if (!read)
        return read.error();
    core::Study study = std::move(read).take().study;
    study.properties = demoProperties();

    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation);
    QDir().mkpath(folder);
    const QString file = QDir(folder).filePath("demo.bothways");
    QFile::remove(file);
    return makeStudy(study, file, "levee_generator.csv");
}

} // namespace bothways::app
