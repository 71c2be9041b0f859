#pragma once

#include "core/drawings/glossary.h"
#include "core/findings/finding.h"
#include "core/plan/quantity.h"
#include "ui/session/selection.h"

#include <QString>

class QWidget;

namespace frontwright {

/// A place in the help: "page" or "page#anchor", as the pages under resources/help name them.
using HelpTopic = QString;

HelpTopic topicOf(InputPlace);
HelpTopic topicOf(FindingCode);
HelpTopic topicOf(QuantityKind);
HelpTopic topicOf(Term);
/// Of what is selected on the drawing.
HelpTopic topicOf(const Selection&);
/// Where the help begins.
HelpTopic firstTopic();

/// From then on F1 on the widget, or on what lies in it, opens the help there.
void setHelpTopic(QWidget&, const HelpTopic&);
/// Of the widget or of the nearest that it lies in; firstTopic() where none has one.
HelpTopic helpTopicAt(const QWidget*);

} // namespace frontwright
