// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/roadside/roadside_draft.h"

#include "core/study/clock.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace bothways::app {
namespace {

constexpr int kDraftVersion = 1;

QJsonValue words(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

std::string words(const QJsonValue& value)
{
    return value.toString().toStdString();
}

QJsonObject toJson(const RoadsideRun& run)
{
    QJsonArray marks;
    for (const core::Mark& mark : run.marks)
        marks += QJsonObject{
            {"at_s", mark.at_s}, {"word", words(mark.word)}, {"words", words(mark.words)}};
    QJsonObject object{{"configuration", words(run.configuration)},
                       {"setting", words(run.setting)},
                       {"direction", words(run.direction)},
                       {"start", words(core::formatDateTime(run.start))},
                       {"start_ms", static_cast<qint64>(run.start_ms)},
                       {"marks", marks},
                       {"typed", run.typed},
                       {"unit", words(core::unitName(run.unit))},
                       {"without_duration", run.without_duration}};
    if (run.end_ms)
        object["end_ms"] = static_cast<qint64>(*run.end_ms);
    return object;
}

std::optional<RoadsideRun> runFrom(const QJsonObject& object)
{
    const auto start = core::parseDateTime(words(object["start"]));
    const auto unit = core::unitFromName(words(object["unit"]));
    RoadsideRun run;
    run.configuration = words(object["configuration"]);
    run.setting = words(object["setting"]);
    run.direction = words(object["direction"]);
    if (!start || !unit || run.configuration.empty() || run.direction.empty() ||
        !object["start_ms"].isDouble())
        return std::nullopt;
    run.start = start.value();
    run.start_ms = object["start_ms"].toInteger();
    run.typed = object["typed"].toString();
    run.unit = *unit;
    run.without_duration = object["without_duration"].toBool();
    if (object["end_ms"].isDouble())
        run.end_ms = object["end_ms"].toInteger();
    if (run.end_ms && *run.end_ms <= run.start_ms)
        return std::nullopt;
    for (const QJsonValue& value : object["marks"].toArray()) {
        const core::Mark mark{value["at_s"].toDouble(-1.0), words(value["word"]),
                              words(value["words"])};
        if (!(mark.at_s >= 0.0) || mark.word.empty())
            return std::nullopt;
        run.marks.push_back(mark);
    }
    return run;
}

} // namespace

QByteArray toBytes(const RoadsideDraft& draft)
{
    if (!draft.run && draft.accessory_on_ms.empty() && draft.weather.empty())
        return {};
    QJsonObject weather;
    for (const auto& [column, value] : draft.weather)
        weather[QString::fromStdString(column)] = value;
    QJsonObject accessories;
    for (const auto& [name, on_ms] : draft.accessory_on_ms)
        accessories[QString::fromStdString(name)] = static_cast<qint64>(on_ms);
    QJsonObject object{{"version", kDraftVersion},
                       {"accessory_on_ms", accessories},
                       {"weather", weather},
                       {"seen_ms", static_cast<qint64>(draft.seen_ms)},
                       {"shift_ms", static_cast<qint64>(draft.shift_ms)}};
    if (draft.run)
        object["run"] = toJson(*draft.run);
    return QJsonDocument(object).toJson(QJsonDocument::Compact);
}

std::optional<RoadsideDraft> draftFrom(const QByteArray& bytes)
{
    const QJsonObject object = QJsonDocument::fromJson(bytes).object();
    if (object["version"].toInt() != kDraftVersion)
        return std::nullopt;
    RoadsideDraft draft;
    draft.seen_ms = object["seen_ms"].toInteger();
    draft.shift_ms = object["shift_ms"].toInteger();
    const QJsonObject accessories = object["accessory_on_ms"].toObject();
    for (auto entry = accessories.begin(); entry != accessories.end(); ++entry)
        draft.accessory_on_ms[entry.key().toStdString()] = entry.value().toInteger();
    const QJsonObject weather = object["weather"].toObject();
    for (auto entry = weather.begin(); entry != weather.end(); ++entry)
        if (!noteWeather(draft.weather, entry.key().toStdString(), entry.value().toDouble()))
            return std::nullopt;
    if (object.contains("run")) {
        draft.run = runFrom(object["run"].toObject());
        if (!draft.run)
            return std::nullopt;
    }
    return draft;
}

} // namespace bothways::app
