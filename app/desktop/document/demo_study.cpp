// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/study_files.h"

#include "app/desktop/document/paths.h"
#include "core/study/properties.h"
#include "storage/recordings/trace_import.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <QTemporaryDir>

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

/// A recording of the demo as a file, since recordings are imported from files.
core::Outcome importRecording(storage::StudyFile& study, const core::Run& run,
                              const QTemporaryDir& scratch)
{
    const QString name = QString::fromStdString(run.trace);
    const QString copy = scratch.filePath(QFileInfo(name).fileName());
    if (!QFile::copy(":/demo/" + name, copy))
        return core::Error{core::ErrorCode::studyFile, "a recording of the demo is missing"_t,
                           run.trace};
    storage::TraceImportOptions options;
    options.run = run.number;
    const auto report = storage::importTrace(study, toPath(copy), options);
    return report ? core::Outcome(core::Done{}) : core::Outcome(report.error());
}

core::Outcome writeDemo(const core::Study& study, const QString& file)
{
    auto made = storage::StudyFile::create(toPath(file), study.properties);
    if (!made)
        return made.error();
    storage::StudyFile demo = std::move(made).take();
    if (core::Outcome imported = demo.importRuns(study, "levee_generator.csv"); !imported)
        return imported;
    const QTemporaryDir scratch;
    for (const core::Run& run : study.runs)
        if (!run.trace.empty())
            if (core::Outcome imported = importRecording(demo, run, scratch); !imported)
                return imported;
    return core::Done{};
}

} // namespace

StudyDocument::Opened makeDemoStudy(const QString& name)
{
    initResources();
    QFile sheet(":/demo/levee_generator.csv");
    if (!sheet.open(QIODevice::ReadOnly))
        return core::Error{core::ErrorCode::studyFile, "the demo's run sheet is missing"_t, {}};
    auto read =
        storage::parseRunSheet(sheet.readAll().toStdString(), "levee_generator.csv", {}, nullptr);
    if (!read)
        return read.error();
    core::Study study = std::move(read).take().study;
    study.properties = demoProperties();

    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation);
    QDir().mkpath(folder);
    const QString file = QDir(folder).filePath(name + ".bothways");
    QFile::remove(file);
    if (const core::Outcome written = writeDemo(study, file); !written) {
        QFile::remove(file); // half a demo is none
        return written.error();
    }
    return StudyDocument::open(file);
}

} // namespace bothways::app
