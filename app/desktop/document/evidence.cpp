// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/evidence.h"

#include "app/desktop/document/paths.h"
#include "app/desktop/document/study_document.h"
#include "app/desktop/look/said.h"

#include <QCoreApplication>
#include <QDesktopServices>
#include <QFileInfo>
#include <QLocale>
#include <QUrl>

namespace bothways::app {
namespace {

struct Evidence {
    Q_DECLARE_TR_FUNCTIONS(Evidence)
};

} // namespace

std::optional<ShownEvidence> evidenceIn(const StudyDocument& document, const std::string& words)
{
    const auto file = storage::evidenceFileIn(words);
    if (!file)
        return std::nullopt;
    ShownEvidence shown;
    shown.file = fromPath(storage::pathOf(*file, toPath(document.path()).parent_path()));
    const QFileInfo info(shown.file);
    shown.name = nameShown(info.fileName().toStdString());
    if (file->at_s)
        //: a clip, and the moment in it
        shown.name =
            Evidence::tr("%1, at %2 s").arg(shown.name, QLocale().toString(*file->at_s, 'g', 6));
    if (info.isFile())
        shown.state = info.size() == file->bytes ? ShownEvidence::State::there
                                                 : ShownEvidence::State::changed;
    return shown;
}

QString openEvidence(const ShownEvidence& evidence)
{
    if (evidence.state == ShownEvidence::State::missing)
        return Evidence::tr("The evidence is not there: %1. Its name, size and SHA-256 are in the "
                            "study.")
            .arg(nameShown(evidence.file.toStdString()));
    if (!QDesktopServices::openUrl(QUrl::fromLocalFile(evidence.file)))
        return Evidence::tr("No program was found that opens %1.")
            .arg(nameShown(evidence.file.toStdString()));
    return {};
}

} // namespace bothways::app
