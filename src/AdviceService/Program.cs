using AdviceService.Verbs;

return CommandLine.Root().Parse(args).Invoke();
