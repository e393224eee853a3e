Console.Error.WriteLine("AdviceService does not serve yet: the domain, the reading of complaints and the rule files are here, the host is not.");
return 1;
